package tankyard.engine.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.report.doc.Results;
import tankyard.engine.units.UnitSystem;

/** Works a lease out and prints its sheet. */
@Command(
    name = "size",
    header = "Work a lease out and print its sheet.",
    description = {
      "",
      "The sheet has the back-pressure window of each separator, the pressure at every stuffing box,"
          + " the lines, vessels, tanks and pumps case beside case, the findings with their way out,"
          + " the bill in short, what was assumed, and how each number came about.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {"", "Exit codes: 0 nothing worse than look, 1 a stop or fix, 2 unusable input."})
final class SizeCommand implements Callable<Integer> {
  private final Errand errand;

  @Mixin private LeaseChoice choice;

  @Option(names = "--json", description = "Print the results as JSON instead of the sheet.")
  private boolean json;

  @Option(names = "--short", description = "Leave the workings out of the printed sheet.")
  private boolean brief;

  @Option(
      names = "--units",
      paramLabel = "SYSTEM",
      converter = UnitsConverter.class,
      description = "Units of the sheet: field (if not said) or metric. Workings stay in field.")
  private UnitSystem units = UnitSystem.FIELD;

  @Option(
      names = "--bill",
      paramLabel = "FILE.csv",
      description = "Also write the bill, every line of it, as CSV.")
  private Optional<String> bill = Optional.empty();

  @Option(
      names = "--map",
      paramLabel = "FILE",
      description = "Also draw the lease map; the name ends in .svg or .png.")
  private Optional<String> map = Optional.empty();

  @Option(names = "--dark", description = "Draw the map light on dark.")
  private boolean dark;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description =
          "Also write everything into this folder: sheet.txt, map.svg, map.png, bill.csv,"
              + " result.json. It is made where there is none.")
  private Optional<String> out = Optional.empty();

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Print this.")
  private boolean help;

  SizeCommand(Errand errand) {
    this.errand = errand;
  }

  @Override
  public Integer call() throws IOException {
    Optional<Target> billTo = bill.map(t -> new Target("--bill", t));
    Optional<Target> mapTo = map.map(SizeCommand::mapTarget);
    Optional<Target> allTo = out.map(t -> new Target("--out", t));
    Products products = new Products(choice.resultsAndCures(errand), units, dark);
    List<String> written = new ArrayList<>();
    billTo.ifPresent(t -> t.write(products.bill()));
    billTo.ifPresent(t -> written.add(t.toString()));
    mapTo.ifPresent(products::writeMap);
    mapTo.ifPresent(t -> written.add(t.toString()));
    allTo.ifPresent(t -> written.addAll(products.writeAll(t)));
    errand.print(printed(products) + (json ? "" : wrote(written)));
    return code(products.results());
  }

  private String printed(Products products) {
    if (json) {
      return products.json();
    }
    return brief ? products.shortSheet() : products.sheet();
  }

  private static Target mapTarget(String typed) {
    String lower = typed.toLowerCase(Locale.ROOT);
    if (!lower.endsWith(".svg") && !lower.endsWith(".png")) {
      throw UnusableException.of(
          "--map " + typed, "a name that ends otherwise", "a name that ends in .svg or .png");
    }
    return new Target("--map", typed);
  }

  private static String wrote(List<String> written) {
    return written.stream().map(w -> "Wrote " + w + "\n").collect(Collectors.joining());
  }

  private static int code(Results results) {
    boolean bad =
        results.findings().stream()
            .map(Finding::severity)
            .anyMatch(s -> s == Severity.STOP || s == Severity.FIX);
    return bad ? Cli.FINDING : 0;
  }
}
