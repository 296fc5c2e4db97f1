package tankyard.engine.checks.injection;

import java.util.List;
import java.util.Optional;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.ValveType;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.study.LaidLine;
import tankyard.engine.working.Source;

/** An injection line with no check valve counted on it: when it breaks the well flows back. */
public final class CheckValveCheck implements Check {
  private static final Source SOURCE = Source.commonPractice("a check valve at the injection well");

  @Override
  public String id() {
    return "injection-check-valve";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.survey().laid().values().stream()
        .map(LaidLine::line)
        .filter(line -> line.service() == Service.INJECTION)
        .filter(line -> !hasCheckValve(line, evidence.survey().catalog()))
        .map(this::finding)
        .toList();
  }

  private static boolean hasCheckValve(Line line, Catalog catalog) {
    return line.fittings().stream()
        .map(count -> catalog.item(count.fitting(), ValveType.class))
        .flatMap(Optional::stream)
        .anyMatch(valve -> valve.duty() == ValveType.Duty.CHECK);
  }

  private Finding finding(Line line) {
    return Finding.of(
            id(),
            Severity.NOTE,
            line.id(),
            line.name() + " has no check valve counted on it: if it breaks, the well flows back.",
            SOURCE)
        .mendedBy("A check valve at the well; add it to the line's fittings.");
  }
}
