package tankyard.engine.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What all commands hang from; by itself it does nothing. */
@Command(
    name = "tankyard",
    header = "Sizes the tank battery of an oil lease from its lease file.",
    description = {
      "",
      "A lease file (its name ends in .lease.json) holds wells, lines, separator, tanks, pump and"
          + " injection well with the ground they stand on. docs/schema has its form.",
      ""
    },
    commandListHeading = "%nCommands:%n",
    optionListHeading = "Options:%n",
    synopsisSubcommandLabel = "COMMAND",
    versionProvider = Version.class,
    footer = {
      "",
      "\"tankyard COMMAND --help\" tells the rest.",
      "",
      "Exit codes: 0 nothing worse than look was found, 1 a stop or fix was found, 2 the input or"
          + " the usage could not be used.",
      "",
      "A planning aid, not an engineer's design; field-check heights and pressures."
    })
final class TankyardCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Print this.")
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Print the version.")
  private boolean version;

  @Override
  public void run() {
    CommandLine command = spec.commandLine();
    throw new ParameterException(command, "no command was given");
  }
}
