package tankyard.engine.checks.tanks;

import java.util.List;
import java.util.stream.Stream;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Tank;
import tankyard.engine.working.Source;

/** A tank without a high switch. */
public final class SwitchMissingCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("a high switch on each tank that can be the last to fill");

  @Override
  public String id() {
    return "high-switch-missing";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return Stream.of(Tank.Duty.OIL, Tank.Duty.WATER)
        .flatMap(duty -> evidence.survey().tanks(duty).stream())
        .filter(tank -> tank.switchHeight().isEmpty())
        .map(this::finding)
        .toList();
  }

  private Finding finding(Tank tank) {
    return Finding.of(
            id(),
            Severity.LOOK,
            tank.id(),
            tank.name() + " has no high switch: nothing stops the wells before it runs over.",
            SOURCE)
        .mendedBy(
            "A switch below the overflow that opens when its signal is lost, stops the wells and"
                + " leaves the injection pump running. Lift it once a month to try it.");
  }
}
