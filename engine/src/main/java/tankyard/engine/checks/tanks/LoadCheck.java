package tankyard.engine.checks.tanks;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.lease.Tank;
import tankyard.engine.study.Defaults;
import tankyard.engine.tanks.RoundTank;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;

/** A truck can't be filled from one tank. */
public final class LoadCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("a load is gauged and sold from one tank");

  @Override
  public String id() {
    return "load-over-tank";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.survey().tanks(Tank.Duty.OIL).stream()
        .filter(tank -> holds(tank).value().toBarrels() < load(evidence, tank).toBarrels())
        .map(tank -> finding(tank, holds(tank), load(evidence, tank)))
        .toList();
  }

  private static Volume load(Evidence evidence, Tank tank) {
    return tank.load().or(() -> evidence.lease().practice().load()).orElse(Defaults.LOAD);
  }

  /** From the sales outlet to the high switch, or to the overflow where there is no switch. */
  private static Computed<Volume> holds(Tank tank) {
    Length low = Defaults.outletOf(tank);
    Length high = tank.switchHeight().orElse(tank.overflowHeight());
    return new RoundTank(tank.diameter()).between(low, high.metres() >= low.metres() ? high : low);
  }

  private Finding finding(Tank tank, Computed<Volume> holds, Volume load) {
    Versus bbl = Versus.of(holds.value(), load, Unit.BARREL, 1);
    return Finding.of(
            id(),
            Severity.LOOK,
            tank.id(),
            tank.name()
                + " holds "
                + bbl.value()
                + " above its sales outlet, less than the "
                + bbl.limit()
                + " a truck takes.",
            SOURCE)
        .mendedBy(
            "A bigger tank, or agree on smaller loads: a purchaser may charge for a short one.")
        .shownBy(holds.working());
  }
}
