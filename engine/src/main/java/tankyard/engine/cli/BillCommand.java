package tankyard.engine.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import tankyard.engine.report.doc.BillReport;
import tankyard.engine.report.doc.Results;
import tankyard.engine.report.sheet.PlainSheet;
import tankyard.engine.units.UnitSystem;

/** Prints what must be bought and done, priced. */
@Command(
    name = "bill",
    header = "Print the bill of a lease: what must be bought and done, priced.",
    description = {
      "",
      "Each line names the drawn things that caused it. What has no price is shown as missing and"
          + " never as nothing.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {"", "Exit codes: 0 printed, 2 unusable input."})
final class BillCommand implements Callable<Integer> {
  private final Errand errand;

  @Mixin private LeaseChoice choice;

  @Option(names = "--csv", description = "Print it as CSV, with every column.")
  private boolean csv;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Print this.")
  private boolean help;

  BillCommand(Errand errand) {
    this.errand = errand;
  }

  @Override
  public Integer call() throws IOException {
    Results results = choice.results(errand);
    errand.print(
        csv
            ? new Products(results, UnitSystem.FIELD, false).bill()
            : PlainSheet.print(BillReport.of(results)));
    return 0;
  }
}
