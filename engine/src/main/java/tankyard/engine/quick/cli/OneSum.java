package tankyard.engine.quick.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickSum;

/** One quick sum as a command. */
final class OneSum implements Callable<Integer> {
  private final QuickSum sum;
  private final CommandSpec spec;

  OneSum(QuickSum sum) {
    this.sum = sum;
    spec = CommandSpec.wrapWithoutInspection(this).name(sum.id());
    spec.usageMessage()
        .header(sum.title())
        .description(sum.about())
        .sortOptions(false)
        .footer("", "Example:", "  sum " + Example.line(sum));
    sum.inputs().forEach(input -> spec.addOption(option(input)));
    spec.addOption(SumCommand.json());
    spec.addOption(SumCommand.help());
  }

  CommandLine commandLine() {
    return new CommandLine(spec);
  }

  List<String> options() {
    return sum.inputs().stream().map(i -> "--" + i.id()).toList();
  }

  @Override
  public Integer call() {
    CommandLine command = spec.commandLine();
    ParseResult parsed = command.getParseResult();
    try {
      Solved solved = Solved.of(sum, typed(parsed));
      command.getOut().print(json(command) ? SumJson.of(solved) : SumText.of(solved));
      command.getOut().flush();
      return CommandLine.ExitCode.OK;
    } catch (IllegalArgumentException e) {
      command.getErr().println("sum " + sum.id() + ": " + e.getMessage());
      command.getErr().flush();
      return CommandLine.ExitCode.USAGE;
    }
  }

  /** The option counts after the sum's name and before it. */
  private static boolean json(CommandLine command) {
    CommandLine above = command.getParent();
    return command.getParseResult().matchedOptionValue(SumCommand.JSON, false)
        || (above != null && above.getParseResult().matchedOptionValue(SumCommand.JSON, false));
  }

  private Map<String, String> typed(ParseResult parsed) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (QuickInput input : sum.inputs()) {
      String value = parsed.matchedOptionValue("--" + input.id(), null);
      if (value != null) {
        typed.put(input.id(), value);
      }
    }
    return typed;
  }

  private static OptionSpec option(QuickInput input) {
    // A percent sign would be taken for a format.
    return OptionSpec.builder("--" + input.id())
        .type(String.class)
        .paramLabel("\"" + input.example() + "\"")
        .description(Example.describe(input).replace("%", "%%"))
        .build();
  }
}
