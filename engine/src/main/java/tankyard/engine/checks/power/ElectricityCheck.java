package tankyard.engine.checks.power;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Status;
import tankyard.engine.working.Source;

/** Somebody will have to wire motors, and hatches and vents breathe gas beside them. */
public final class ElectricityCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("licensed electrician, area classification, lock-out");

  @Override
  public String id() {
    return "electricity";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    boolean wiring =
        evidence.lease().powerPoles().stream().anyMatch(p -> p.status() == Status.NEW)
            || evidence.lease().injectionPumps().stream().anyMatch(p -> p.status() == Status.NEW);
    return wiring ? List.of(finding()) : List.of();
  }

  private Finding finding() {
    return Finding.of(
            id(),
            Severity.NOTE,
            "",
            "Motors are to be wired. Gas hangs round hatches, vents and pumps, and what sparks there"
                + " must be made for it.",
            SOURCE)
        .mendedBy(
            "A licensed electrician, the local electrical code, the classified areas drawn before"
                + " anything is set; lock out before a hand goes in.");
  }
}
