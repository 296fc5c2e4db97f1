package tankyard.engine.checks.tanks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.Tank;

/** Tanks with no berm round them. */
public final class BermMissingCheck implements Check {

  @Override
  public String id() {
    return "berm-missing";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<Tank> tanks = evidence.lease().tanks().stream().filter(t -> t.status().stays()).toList();
    Optional<Berm> berm = evidence.lease().site().berm();
    if (tanks.isEmpty()) {
      return List.of();
    }
    if (berm.isEmpty()) {
      return List.of(
          finding(
              "", "No berm is drawn round the tanks: what spills runs where the ground falls."));
    }
    List<Finding> found = new ArrayList<>();
    for (Tank tank : tanks) {
      if (!isInside(tank, berm.get())) {
        found.add(finding(tank.id(), tank.name() + " stands outside the berm."));
      }
    }
    return found;
  }

  private static boolean isInside(Tank tank, Berm berm) {
    double east = tank.at().east().metres() - berm.corner().east().metres();
    double north = tank.at().north().metres() - berm.corner().north().metres();
    return east >= 0
        && east <= berm.length().metres()
        && north >= 0
        && north <= berm.width().metres();
  }

  private Finding finding(String thingId, String words) {
    return Finding.of(id(), Severity.LOOK, thingId, words, BermHeightCheck.SOURCE)
        .mendedBy(
            "Draw a berm that holds the largest tank and the rain, the separator inside it;"
                + " local rules govern.");
  }
}
