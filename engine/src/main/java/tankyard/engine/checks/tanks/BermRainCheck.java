package tankyard.engine.checks.tanks;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.BermResult;

/** Nobody typed a rain for a berm, and it is sized for none: the first storm takes the room. */
public final class BermRainCheck implements Check {
  @Override
  public String id() {
    return "berm-rain-not-typed";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.yard().berms().stream()
        .filter(berm -> !berm.countsRain(evidence.lease()))
        .map(berm -> finding(evidence, berm))
        .toList();
  }

  /** What a berm's height is for. */
  static String held(Evidence evidence, BermResult berm) {
    String tank = evidence.nameOf(berm.largestTankId());
    return tank + (berm.countsRain(evidence.lease()) ? " and the rain" : " alone");
  }

  private Finding finding(Evidence evidence, BermResult berm) {
    return Finding.of(
            id(),
            Severity.LOOK,
            berm.bermId(),
            "The height of "
                + evidence.nameOf(berm.bermId())
                + " holds "
                + evidence.nameOf(berm.largestTankId())
                + " and no rain: none is typed.",
            BermHeightCheck.SOURCE)
        .mendedBy(
            "Type the storm it must also hold; the rain of 24 hours that comes once in 25 years is"
                + " often asked for. Local rules govern.")
        .shownBy(berm.needed().working());
  }
}
