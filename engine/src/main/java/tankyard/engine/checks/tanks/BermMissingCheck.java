package tankyard.engine.checks.tanks;

import java.util.List;
import java.util.stream.Stream;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.Lease;
import tankyard.engine.study.Outlines;
import tankyard.engine.study.Shell;

/** Tanks, or the vessels beside them, with no berm round them. */
public final class BermMissingCheck implements Check {

  @Override
  public String id() {
    return "berm-missing";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Lease lease = evidence.lease();
    List<Berm> berms = lease.berms().stream().filter(berm -> berm.status().stays()).toList();
    if (Shell.of(lease).isEmpty()) {
      return List.of();
    }
    if (berms.isEmpty()) {
      return List.of(
          finding(
              "", "No berm is drawn round the tanks: what spills runs where the ground falls."));
    }
    String outside = " stands outside " + (berms.size() == 1 ? "the berm." : "every berm.");
    return Stream.concat(lease.tanks().stream(), lease.vessels())
        .filter(thing -> thing.status().stays())
        .filter(thing -> berms.stream().noneMatch(berm -> Outlines.holds(berm, thing.at())))
        .map(thing -> finding(thing.id(), thing.name() + outside))
        .toList();
  }

  private Finding finding(String thingId, String words) {
    return Finding.of(id(), Severity.LOOK, thingId, words, BermHeightCheck.SOURCE)
        .mendedBy(
            "Draw a berm that holds the largest tank and the rain, the separator inside it;"
                + " local rules govern.");
  }
}
