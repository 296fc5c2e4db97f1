package tankyard.engine.checks.growth;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.outlook.Outlook;
import tankyard.engine.outlook.RunOut;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** What runs out within two years as the water grows; of each kind the first. */
public final class RunsOutCheck implements Check {
  /** Within this a permit, a pump or a tank must be thought of now. */
  static final double SOON_MONTHS = 24;

  private static final Source SOURCE =
      Source.commonPractice("two years ahead: a permit, a pump or a tank takes months to come by");

  @Override
  public String id() {
    return "runs-out";
  }

  @Override
  public Set<String> gives() {
    return Set.of(
        "pump-runs-out",
        "injection-well-runs-out",
        "water-tanks-run-out",
        "overflow-runs-out",
        "window-runs-out");
  }

  private static String id(RunOut.Kind kind) {
    return switch (kind) {
      case PUMP_LONG_HOURS, PUMP_FULL_TIME -> "pump-runs-out";
      case WELL_PRESSURE, PERMIT_RATE -> "injection-well-runs-out";
      case WATER_HOURS -> "water-tanks-run-out";
      case OVERFLOW -> "overflow-runs-out";
      case SETTING, WINDOW -> "window-runs-out";
    };
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Map<String, Finding> found = new LinkedHashMap<>();
    evidence.outlook().map(Outlook::rows).orElse(List.of()).stream()
        .filter(row -> !row.already() && months(row) <= SOON_MONTHS)
        .forEach(row -> found.putIfAbsent(id(row.kind()), finding(evidence, row)));
    return List.copyOf(found.values());
  }

  private static double months(RunOut row) {
    return row.after().value().in(Unit.MONTH);
  }

  private static Finding finding(Evidence evidence, RunOut row) {
    Outlook outlook = evidence.outlook().orElseThrow();
    Finding finding =
        Finding.of(
                id(row.kind()),
                Severity.LOOK,
                row.thingId(),
                row.words()
                    + " in month "
                    + Versus.print(months(row), Unit.ONE, 1)
                    + ", with water that doubles in "
                    + Versus.print(outlook.doubles().in(Unit.MONTH), Unit.ONE, 1)
                    + " months"
                    + next(outlook, row)
                    + ".",
                SOURCE)
            .mendedBy(WaysOn.of(evidence, row))
            .shownBy(row.after().working());
    return row.caseId().map(finding::inCase).orElse(finding);
  }

  /** Long hours are a warning; full time is the end. */
  private static String next(Outlook outlook, RunOut row) {
    return row.kind() != RunOut.Kind.PUMP_LONG_HOURS
        ? ""
        : outlook
            .of(RunOut.Kind.PUMP_FULL_TIME)
            .map(full -> "; all day in month " + Versus.print(months(full), Unit.ONE, 1))
            .orElse("");
  }
}
