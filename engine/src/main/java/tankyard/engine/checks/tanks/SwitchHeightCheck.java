package tankyard.engine.checks.tanks;

import java.util.List;
import java.util.stream.Stream;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.lease.Tank;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** A high switch that trips only when the tank already runs over. */
public final class SwitchHeightCheck implements Check {
  private static final Source SOURCE =
      Source.definition("height of the switch against the lip of the overflow");

  @Override
  public String id() {
    return "switch-above-lip";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return Stream.of(Tank.Duty.OIL, Tank.Duty.WATER)
        .flatMap(duty -> evidence.survey().tanks(duty).stream())
        .filter(SwitchHeightCheck::isTooHigh)
        .map(this::finding)
        .toList();
  }

  private static boolean isTooHigh(Tank tank) {
    return tank.switchHeight()
        .filter(height -> height.metres() >= tank.overflowHeight().metres())
        .isPresent();
  }

  private Finding finding(Tank tank) {
    Versus feet = Versus.of(tank.switchHeight().orElseThrow(), tank.overflowHeight(), Unit.FOOT, 2);
    return Finding.of(
            id(),
            Severity.FIX,
            tank.id(),
            tank.name()
                + "'s high switch is at "
                + feet.value()
                + " and its overflow at "
                + feet.limit()
                + ": the tank runs over before the switch trips.",
            SOURCE)
        .mendedBy(
            "Set the switch below the overflow by what comes while the wells stop and the lines"
                + " drain.");
  }
}
