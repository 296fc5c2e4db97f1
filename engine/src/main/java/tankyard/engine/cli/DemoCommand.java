package tankyard.engine.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import tankyard.engine.report.doc.Results;
import tankyard.engine.units.UnitSystem;

/** Works the demo lease out and writes everything there is to write. */
@Command(
    name = "demo",
    header = "Work the demo lease out and write its sheet, map, bill and results.",
    description = {"", "The demo lease is invented: wells, prices and limits are nobody's.", ""},
    optionListHeading = "Options:%n",
    footer = {"", "Exit codes: 0 done, whatever was found; 2 the folder could not be written."})
final class DemoCommand implements Callable<Integer> {
  private final Errand errand;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where to write; ./tankyard-out if not said. It is made where there is none.")
  private String out = "tankyard-out";

  @Option(
      names = "--date",
      paramLabel = "DAY",
      converter = DayConverter.class,
      description = "The day to print and to price by, such as 2026-07-01. Without it, today.")
  private Optional<LocalDate> date = Optional.empty();

  @Option(names = "--dark", description = "Draw the map light on dark.")
  private boolean dark;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Print this.")
  private boolean help;

  DemoCommand(Errand errand) {
    this.errand = errand;
  }

  @Override
  public Integer call() throws IOException {
    Target folder = new Target("--out", out);
    Results results = errand.resultsAndCures(errand.demoLease(), LeaseChoice.day(date));
    Products products = new Products(results, UnitSystem.FIELD, dark);
    String where = Path.of(out).toAbsolutePath().normalize().toString();
    List<String> written = products.writeAll(folder);
    errand.print(
        "The demo lease's sheet, map, bill and results are in the folder "
            + where
            + ":\n"
            + written.stream().map(w -> "  " + w + "\n").collect(Collectors.joining())
            + "\n");
    errand.print(products.shortSheet());
    errand.print("\nNumbers in [brackets] are workings: see the end of " + written.get(0) + ".\n");
    return 0;
  }
}
