package tankyard.engine.checks.injection;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tank;
import tankyard.engine.study.Defaults;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** The pump is stopped only when its tank's nozzle already draws air. */
public final class PumpOffCheck implements Check {
  private static final Source SOURCE = Source.definition("the nozzle the suction line leaves from");

  @Override
  public String id() {
    return "pump-off-under-nozzle";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.lease().tanks().stream()
        .filter(tank -> tank.status().stays() && feedsAPump(evidence.lease(), tank))
        .filter(
            tank ->
                tank.pumpOff()
                    .filter(off -> off.metres() <= Defaults.outletOf(tank).metres())
                    .isPresent())
        .map(this::finding)
        .toList();
  }

  private static boolean feedsAPump(Lease lease, Tank tank) {
    return lease
        .linesOf(tank.id())
        .anyMatch(l -> l.service() == Service.SUCTION && l.from().equals(tank.id()));
  }

  private Finding finding(Tank tank) {
    Versus feet = Versus.of(tank.pumpOff().orElseThrow(), Defaults.outletOf(tank), Unit.FOOT, 2);
    return Finding.of(
            id(),
            Severity.FIX,
            tank.id(),
            tank.name()
                + " stops its pump at "
                + feet.value()
                + ", no higher than the nozzle it sucks from, "
                + feet.limit()
                + ": the pump draws air and the oil film.",
            SOURCE)
        .mendedBy(
            "A pump-off level well above the nozzle, and a low-level cut-out that stops the pump"
                + " whatever its float does.",
            "A lower nozzle, or an elbow turned down inside the tank.");
  }
}
