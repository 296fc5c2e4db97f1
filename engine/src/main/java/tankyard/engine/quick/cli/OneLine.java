package tankyard.engine.quick.cli;

import java.util.List;
import picocli.CommandLine;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.sums.AllSums;

/** Says in one line what was wrong with the options and what is taken. */
final class OneLine implements CommandLine.IParameterExceptionHandler {
  @Override
  public int handleParseException(CommandLine.ParameterException e, String[] args) {
    CommandLine command = e.getCommandLine();
    List<String> taken =
        command.getCommandSpec().userObject() instanceof OneSum one
            ? one.options()
            : AllSums.list().stream().map(QuickSum::id).toList();
    String path = command.getCommandSpec().qualifiedName(" ");
    command
        .getErr()
        .println(path + ": " + e.getMessage() + ". Taken: " + String.join(", ", taken) + ".");
    command.getErr().flush();
    return CommandLine.ExitCode.USAGE;
  }
}
