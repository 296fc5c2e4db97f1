package tankyard.engine.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tankyard.engine.report.doc.Page;
import tankyard.engine.report.doc.Results;
import tankyard.engine.report.sheet.PlainSheet;
import tankyard.engine.units.UnitSystem;

/** Prints one of the pages that people at the battery use. */
@Command(
    name = "page",
    header = "Print a page for the people at the battery.",
    description = {
      "",
      "\"sheet\": everything, as size prints it. \"settings\": what everything is set to, how the valves stand, the order of starting up and"
          + " what to do first. \"gauge\": barrels at each inch of each tank.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {"", "Exit codes: 0 printed, 2 unusable input."})
final class PageCommand implements Callable<Integer> {
  private final Errand errand;

  @Parameters(
      paramLabel = "PAGE",
      index = "0",
      converter = PageConverter.class,
      description = "Which page: sheet, settings or gauge.")
  private Page page;

  @Mixin private LeaseChoice choice;

  @Option(
      names = "--units",
      paramLabel = "SYSTEM",
      converter = UnitsConverter.class,
      description = "Units of the page: field (if not said) or metric.")
  private UnitSystem units = UnitSystem.FIELD;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Print this.")
  private boolean help;

  PageCommand(Errand errand) {
    this.errand = errand;
  }

  @Override
  public Integer call() throws IOException {
    Results results = page.tellsCures() ? choice.resultsAndCures(errand) : choice.results(errand);
    errand.print(PlainSheet.print(page.of(results, units)));
    return 0;
  }
}
