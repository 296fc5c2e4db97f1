package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Vessel;
import tankyard.engine.tanks.HighSwitch;
import tankyard.engine.tanks.RoundTank;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;

/** Where each tank's high-level switch must sit, in one case. */
final class Switches {
  private final CaseStudy study;
  private final Time reaction;
  private final Volume drainBack;

  private Switches(CaseStudy study) {
    this.study = study;
    this.reaction = study.lease().practice().reaction().orElse(Defaults.REACTION);
    this.drainBack = Volume.ofBarrels(Unit.BARREL.fromSi(drainBackM3(study.survey())));
  }

  static List<SwitchResult> of(CaseStudy study) {
    Switches switches = new Switches(study);
    LiquidRate all = study.allFluid();
    LiquidRate water = study.allWater();
    List<SwitchResult> found = new ArrayList<>();
    study.survey().tanks(Tank.Duty.OIL).forEach(t -> found.add(switches.result(t, all)));
    study.survey().tanks(Tank.Duty.WATER).forEach(t -> found.add(switches.result(t, water)));
    return List.copyOf(found);
  }

  private SwitchResult result(Tank tank, LiquidRate rate) {
    HighSwitch law =
        new HighSwitch(
            new RoundTank(tank.diameter()), tank.overflowHeight(), rate, reaction, drainBack);
    boolean comes = rate.toBarrelsPerDay() > 0;
    return new SwitchResult(
        tank.id(),
        rate,
        tank.switchHeight(),
        law.highest(),
        comes ? tank.switchHeight().map(law::failsIn) : Optional.empty());
  }

  /** What stands in the flow lines above the lowest inlet of a separator or gun barrel. */
  private static double drainBackM3(Survey survey) {
    double inlet = Double.POSITIVE_INFINITY;
    for (Vessel vessel : survey.vessels()) {
      double ground = survey.ground().metresUnder(vessel);
      inlet = Math.min(inlet, ground + vessel.inletHeight().metres());
    }
    double cubicMetres = 0;
    for (LaidLine line : survey.gathering().lines()) {
      cubicMetres += line.contentsAboveM3(inlet);
    }
    return cubicMetres;
  }
}
