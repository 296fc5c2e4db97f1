package tankyard.engine.checks.tanks;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.OverflowResult;
import tankyard.engine.units.Length;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;

/** An overflow is drawn level or rising, and nobody typed how far it falls. */
public final class OverflowFallCheck implements Check {
  private static final Source SOURCE =
      Source.published("Manning 1891, part-full circular pipe, three quarters full");

  @Override
  public String id() {
    return "overflow-level";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      for (OverflowResult overflow : result.overflows()) {
        if (overflow.fall().isEmpty()) {
          overflow
              .leastFall()
              .ifPresent(
                  least ->
                      worst.add(
                          overflow.lineId(),
                          least.value().metres(),
                          () -> finding(evidence, result, overflow, least)));
        }
      }
    }
    return worst.findings();
  }

  private Finding finding(
      Evidence evidence, CaseResult result, OverflowResult overflow, Computed<Length> least) {
    return Finding.of(
            id(),
            Severity.LOOK,
            overflow.lineId(),
            evidence.nameOf(overflow.lineId())
                + " is drawn from lip to lip without a fall. To carry all fluid, "
                + Versus.print(overflow.allFluid(), Unit.BARREL_PER_DAY, 0)
                + " in "
                + result.designCase().name()
                + ", it must fall at least "
                + Versus.print(upToEighths(least.value()), Unit.INCH, 3)
                + " on its way; level, it holds liquid that freezes.",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            "Type how far it falls, or lower the lip of the tank it ends at.",
            "Lay it falling all the way, with no valve or one locked open.")
        .shownBy(least.working());
  }

  /** What a tape measure tells. */
  private static Length upToEighths(Length length) {
    return Length.of(Rounding.UP.toParts(length.in(Unit.INCH), 8), Unit.INCH);
  }
}
