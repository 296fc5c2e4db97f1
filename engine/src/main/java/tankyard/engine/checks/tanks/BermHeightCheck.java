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
import tankyard.engine.working.Source;

/** The berm as built is lower than the largest tank and the rain ask for. */
public final class BermHeightCheck implements Check {
  static final Source SOURCE =
      Source.published("40 CFR 112.9(c)(2): largest container and rain; upright walls");

  @Override
  public String id() {
    return "berm-too-low";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.yard().berms().stream()
        .filter(berm -> berm.built().isPresent())
        .filter(berm -> berm.built().get().metres() < berm.needed().value().metres())
        .map(berm -> finding(evidence, berm))
        .toList();
  }

  private Finding finding(Evidence evidence, BermResult berm) {
    double needed = Rounding.UP.round(berm.needed().value().toFeet(), 2);
    Versus feet = Versus.of(berm.built().orElseThrow().toFeet(), needed, Unit.FOOT, 2);
    return Finding.of(
            id(),
            Severity.FIX,
            berm.bermId(),
            evidence.nameOf(berm.bermId())
                + " is "
                + feet.value()
                + " high; "
                + feet.limit()
                + " are needed for "
                + BermRainCheck.held(evidence, berm)
                + ".",
            SOURCE)
        .mendedBy(
            "Raise the walls to the next quarter foot and add what they settle, or widen the pad.",
            "Some states ask for more than the largest tank: local rules govern.")
        .shownBy(berm.needed().working());
  }
}
