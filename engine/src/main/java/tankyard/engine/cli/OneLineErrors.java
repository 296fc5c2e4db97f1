package tankyard.engine.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import tankyard.engine.leasefile.LeaseFileException;
import tankyard.engine.network.Unsolved;

/** Says what could not be used in one line, with what would be taken instead. */
final class OneLineErrors implements IParameterExceptionHandler, IExecutionExceptionHandler {

  @Override
  public int handleParseException(ParameterException e, String[] args) {
    CommandLine command = e.getCommandLine();
    return say(
        command,
        command.getCommandSpec().qualifiedName(" ")
            + ": "
            + lowered(e.getMessage())
            + "; accepted: "
            + accepted(command.getCommandSpec()));
  }

  @Override
  public int handleExecutionException(Exception e, CommandLine command, ParseResult typed) {
    if (e instanceof LeaseFileException unreadable) {
      return say(command, first(unreadable));
    }
    if (e instanceof UnusableException unusable) {
      return say(command, unusable.getMessage());
    }
    if (e instanceof Unsolved unsolved) {
      return say(
          command,
          command.getCommandSpec().qualifiedName(" ")
              + ": "
              + lowered(unsolved.getMessage())
              + "; accepted: the same lines with one of them shut or left out");
    }
    return say(
        command,
        command.getCommandSpec().qualifiedName(" ")
            + ": could not be done because of a fault in the program ("
            + e
            + "); accepted: the same file sent in with a report of the fault");
  }

  private static String first(LeaseFileException unreadable) {
    int more = unreadable.problems().size() - 1;
    String line = unreadable.problems().get(0).inOneLine();
    return more == 0 ? line : line + " (and " + more + " more: see \"check --all\")";
  }

  private static int say(CommandLine command, String line) {
    command.getErr().println(line.replaceAll("\\s*\\R\\s*", " "));
    command.getErr().flush();
    return Cli.UNUSABLE;
  }

  private static String lowered(String message) {
    return message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1);
  }

  /** What may stand there: the commands, or the command's options. */
  private static String accepted(CommandSpec spec) {
    Stream<String> commands = spec.subcommands().keySet().stream();
    List<String> files = spec.positionalParameters().stream().map(p -> p.paramLabel()).toList();
    Stream<String> options = spec.options().stream().map(OptionSpec::longestName).sorted();
    return Stream.of(commands, files.stream(), options)
        .flatMap(s -> s)
        .collect(Collectors.joining(", "));
  }
}
