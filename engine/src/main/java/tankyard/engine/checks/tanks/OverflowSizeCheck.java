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
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** An overflow passes less than all the fluid, which is what comes when the dump valve sticks. */
public final class OverflowSizeCheck implements Check {
  private static final Source SOURCE =
      Source.memory(
          "self-venting drain, Froude number 0.31, and Manning on its fall, against all fluid");

  @Override
  public String id() {
    return "overflow-too-small";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      for (OverflowResult overflow : result.overflows()) {
        double shortBy =
            overflow.allFluid().toBarrelsPerDay() - overflow.capacity().value().toBarrelsPerDay();
        if (shortBy > 0) {
          worst.add(overflow.lineId(), shortBy, () -> finding(evidence, result, overflow, shortBy));
        }
      }
    }
    return worst.findings();
  }

  private Finding finding(
      Evidence evidence, CaseResult result, OverflowResult overflow, double shortBy) {
    Versus rate =
        Versus.of(overflow.capacity().value(), overflow.allFluid(), Unit.BARREL_PER_DAY, 0);
    return Finding.of(
            id(),
            Severity.FIX,
            overflow.lineId(),
            evidence.nameOf(overflow.lineId())
                + " passes "
                + rate.value()
                + (evidence.survey().separators().isEmpty()
                    ? "; with the gun barrel's leg plugged all fluid comes, "
                    : "; with the dump valve stuck all fluid comes, ")
                + rate.limit()
                + " in "
                + result.designCase().name()
                + ". It spills "
                + Versus.print(shortBy, Unit.BARREL_PER_DAY, 0)
                + ".",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            "Lay it in the next size or steeper, falling all the way, with no valve or one locked open.",
            "Stagger the wells' timers, so that less comes at once.")
        .shownBy(overflow.capacity().working());
  }
}
