package tankyard.engine.checks.vessels;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.working.Source;

/** A heater-treater is thought of: a fire beside oil. */
public final class FiredVesselCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("distances of fired vessels are the local code's");

  @Override
  public String id() {
    return "fired-vessel";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.lease().practice().treatAt().isEmpty()
        ? List.of()
        : List.of(
            Finding.of(
                    id(),
                    Severity.NOTE,
                    "",
                    "A heater-treater is fired: how far it must stand from tanks, wells, vents and"
                        + " the truck, and who may work near it, are not this program's to say.",
                    SOURCE)
                .mendedBy(
                    "Ask the local code and the fire marshal before its place is chosen; hot work"
                        + " rules hold near it; a flame arrester, and a shut-down that fails safe."));
  }
}
