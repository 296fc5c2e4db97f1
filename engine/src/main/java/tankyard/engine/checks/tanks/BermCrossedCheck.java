package tankyard.engine.checks.tanks;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Berm;
import tankyard.engine.study.Outlines;
import tankyard.engine.working.Source;

/** A berm whose sides cross each other has no inside to hold anything. */
public final class BermCrossedCheck implements Check {
  private static final Source SOURCE =
      Source.definition("sides that cross close round no one area");

  @Override
  public String id() {
    return "berm-crossed";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.lease().berms().stream()
        .filter(berm -> berm.status().stays() && Outlines.of(berm).crossesItself())
        .map(this::finding)
        .toList();
  }

  private Finding finding(Berm berm) {
    return Finding.of(
            id(),
            Severity.FIX,
            berm.id(),
            berm.name() + ": its sides cross, so its height can't be worked out.",
            SOURCE)
        .mendedBy("Drag its corners into order round the tanks, or take one out.");
  }
}
