package tankyard.engine.checks.tanks;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tank;
import tankyard.engine.working.Source;

/** An oil tank that no overflow leads on from. */
public final class OverflowMissingCheck implements Check {
  private static final Source SOURCE =
      Source.memory("40 CFR 112.9(c)(4): overflow lines between tanks are one of the safeguards");

  @Override
  public String id() {
    return "overflow-missing";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.survey().tanks(Tank.Duty.OIL).stream()
        .filter(tank -> !leadsOn(evidence, tank))
        .map(this::finding)
        .toList();
  }

  private static boolean leadsOn(Evidence evidence, Tank tank) {
    return evidence.lease().lines().stream()
        .anyMatch(
            line ->
                line.service() == Service.OVERFLOW
                    && line.status().stays()
                    && line.from().equals(tank.id()));
  }

  private Finding finding(Tank tank) {
    return Finding.of(
            id(),
            Severity.LOOK,
            tank.id(),
            tank.name() + " has no overflow: what comes when it is full goes over its hatch.",
            SOURCE)
        .mendedBy(
            "Draw an overflow from it to the next tank, and from the last to the water tank.");
  }
}
