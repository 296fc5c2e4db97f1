package tankyard.engine.checks.tanks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Berm;
import tankyard.engine.study.Shell;

/** Tanks with no berm round them. */
public final class BermMissingCheck implements Check {

  @Override
  public String id() {
    return "berm-missing";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<Shell> tanks = Shell.of(evidence.lease());
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
    for (Shell tank : tanks) {
      if (!berm.get().contains(tank.at())) {
        found.add(finding(tank.id(), tank.name() + " stands outside the berm."));
      }
    }
    return found;
  }

  private Finding finding(String thingId, String words) {
    return Finding.of(id(), Severity.LOOK, thingId, words, BermHeightCheck.SOURCE)
        .mendedBy(
            "Draw a berm that holds the largest tank and the rain, the separator inside it;"
                + " local rules govern.");
  }
}
