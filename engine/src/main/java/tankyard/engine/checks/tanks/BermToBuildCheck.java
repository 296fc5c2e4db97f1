package tankyard.engine.checks.tanks;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.study.BermResult;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;

/** How high the berm that is drawn must be built. */
public final class BermToBuildCheck implements Check {

  @Override
  public String id() {
    return "berm-height";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.yard().berms().stream()
        .filter(berm -> berm.built().isEmpty())
        .map(berm -> finding(evidence, berm))
        .toList();
  }

  private Finding finding(Evidence evidence, BermResult berm) {
    double needed = Rounding.UP.round(berm.needed().value().toFeet(), 2);
    return Finding.of(
            id(),
            Severity.NOTE,
            berm.bermId(),
            evidence.nameOf(berm.bermId())
                + " needs "
                + Versus.print(needed, Unit.FOOT, 2)
                + " for "
                + BermRainCheck.held(evidence, berm)
                + ": build it to "
                + Versus.print(berm.toBuild(), Unit.FOOT, 2)
                + " after it has settled, which takes "
                + Versus.print(berm.dirt().value(), Unit.CUBIC_YARD, 0)
                + " of dirt.",
            BermHeightCheck.SOURCE)
        .mendedBy(
            "Some states ask for more than the largest tank: local rules govern. Keep the drain"
                + " valve locked shut.")
        .shownBy(berm.needed().working());
  }
}
