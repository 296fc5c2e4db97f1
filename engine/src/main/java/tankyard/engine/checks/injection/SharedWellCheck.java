package tankyard.engine.checks.injection;

import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.SharedWell;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;

/** A well two leases share passes its limit while both of them pump. */
public final class SharedWellCheck implements Check {
  private static final Source SOURCE =
      Source.definition("wellhead pressure at both rates; the permit governs");

  /** Psi that differ only by rounding are the same. */
  private static final double SLIP = 1e-9;

  @Override
  public String id() {
    return "shared-well-over-permit";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      for (SharedWell well : result.sharedWells()) {
        over(well)
            .ifPresent(
                limit ->
                    worst.add(
                        well.wellId(),
                        well.bothOn().value().toPsi(),
                        () -> finding(evidence, result, well, limit)));
      }
    }
    return worst.findings();
  }

  private static Optional<Pressure> over(SharedWell well) {
    return well.limit()
        .map(Computed::value)
        .filter(limit -> well.bothOn().value().toPsi() > limit.toPsi() * (1 + SLIP));
  }

  private Finding finding(Evidence evidence, CaseResult result, SharedWell well, Pressure limit) {
    Versus psi = Versus.of(well.bothOn().value(), limit, Unit.PSI, 0);
    boolean must = well.mustOverlap().value().toHours() > 0;
    return Finding.of(
            id(),
            must ? Severity.STOP : Severity.FIX,
            well.wellId(),
            evidence.nameOf(well.wellId())
                + " stands at "
                + psi.value()
                + " while both leases pump; it may have "
                + psi.limit()
                + ". They run at once "
                + (must
                    ? "at least "
                        + Versus.print(well.mustOverlap().value(), Unit.HOUR, 1)
                        + " a day, however they take turns."
                    : Versus.print(well.byChance().value(), Unit.HOUR, 1)
                        + " a day, if neither knows of the other."),
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            must
                ? "Slow one of the pumps or shorten its day until their hours fit into one, and let"
                    + " them take turns."
                : "Let them take turns: a timer, or a pressure switch that holds one while the"
                    + " other runs.",
            "A second injection well, with its permit asked for now; the permit may name leases.")
        .shownBy(well.bothOn().working());
  }
}
