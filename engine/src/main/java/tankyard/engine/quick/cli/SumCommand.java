package tankyard.engine.quick.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.sums.AllSums;

/**
 * The command {@code sum}: without an id it lists the quick sums, and each sum is a subcommand
 * whose options are its inputs. Bad input is one line on standard error and exit code 2.
 */
public final class SumCommand implements Callable<Integer> {
  static final String JSON = "--json";

  private final CommandSpec spec;

  private SumCommand() {
    spec = CommandSpec.wrapWithoutInspection(this).name("sum");
    spec.usageMessage().description("Single calculations without a lease.");
    spec.addOption(help());
    spec.addOption(json());
  }

  /** The command, ready to be run or to be added to another one as a subcommand. */
  public static CommandLine commandLine() {
    CommandLine all = new CommandLine(new SumCommand().spec);
    for (QuickSum sum : AllSums.list()) {
      all.addSubcommand(sum.id(), new OneSum(sum).commandLine());
    }
    return all.setParameterExceptionHandler(new OneLine());
  }

  @Override
  public Integer call() {
    CommandLine command = spec.commandLine();
    boolean json = command.getParseResult().matchedOptionValue(JSON, false);
    command.getOut().print(json ? SumJson.list() : SumText.list());
    command.getOut().flush();
    return CommandLine.ExitCode.OK;
  }

  static OptionSpec json() {
    return OptionSpec.builder(JSON)
        .type(boolean.class)
        .arity("0")
        .description("Print everything as JSON.")
        .build();
  }

  static OptionSpec help() {
    return OptionSpec.builder("-h", "--help")
        .usageHelp(true)
        .type(boolean.class)
        .arity("0")
        .description("Print this.")
        .build();
  }
}
