package tankyard.engine.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.LeaseFileException;
import tankyard.engine.leasefile.Problem;

/** Reads a lease file and says whether it can be used. */
@Command(
    name = "check",
    header = "Read a lease file and say whether it can be used.",
    description = {"", "Works nothing out. One line says what is in it, or what is wrong.", ""},
    optionListHeading = "%nOptions:%n",
    footer = {"", "Exit codes: 0 it can be used, 2 it can't."})
final class CheckCommand implements Callable<Integer> {
  private final Errand errand;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The lease file.")
  private String file;

  @Option(names = "--all", description = "Print everything that is wrong, one line each.")
  private boolean all;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Print this.")
  private boolean help;

  CheckCommand(Errand errand) {
    this.errand = errand;
  }

  @Override
  public Integer call() throws IOException {
    try {
      errand.print(words(LeaseChoice.read(file)));
      return 0;
    } catch (LeaseFileException e) {
      if (!all) {
        throw e;
      }
      CommandLine command = spec.commandLine();
      e.problems().stream().map(Problem::inOneLine).forEach(command.getErr()::println);
      return Cli.UNUSABLE;
    }
  }

  private String words(Lease lease) {
    return "%s can be used: \"%s\", %d things, %d lines, %d design cases.%n"
        .formatted(
            file, lease.name(), lease.things().count(), lease.lines().size(), lease.cases().size())
        .replace(System.lineSeparator(), "\n");
  }
}
