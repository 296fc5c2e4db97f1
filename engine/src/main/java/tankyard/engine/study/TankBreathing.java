package tankyard.engine.study;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.catalog.TankSize;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tank;
import tankyard.engine.tanks.Breathing;
import tankyard.engine.tanks.RoofVent;
import tankyard.engine.tanks.RoundTank;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;

/**
 * How the tanks breathe in one case. An oil tank is drawn down by the truck's pump and fills with
 * all the fluid when a dump valve sticks shut; a water tank is drawn down by the injection pumps
 * and fills with the design water.
 */
final class TankBreathing {
  private static final Pressure OPEN = Pressure.ofPsi(0);

  private final CaseStudy study;
  private final TankGas gas;

  private TankBreathing(CaseStudy study, TankGas gas) {
    this.study = study;
    this.gas = gas;
  }

  static List<BreathingResult> of(CaseStudy study, TankGas gas) {
    TankBreathing breathing = new TankBreathing(study, gas);
    return Stream.of(Tank.Duty.OIL, Tank.Duty.WATER)
        .flatMap(duty -> study.survey().tanks(duty).stream())
        .map(breathing::result)
        .toList();
  }

  private BreathingResult result(Tank tank) {
    boolean oil = tank.duty() == Tank.Duty.OIL;
    Volume shell = shell(tank);
    Computed<GasRate> in = Breathing.in(oil ? truck() : pumps(), shell);
    Computed<GasRate> out =
        Breathing.out(oil ? study.allFluid() : water(tank), shell, oil, gas.into(tank));
    Pressure drawsAt = tank.ventDraws().orElse(OPEN);
    Pressure liftsAt = tank.ventLifts().orElse(OPEN);
    Optional<TankSize> size =
        tank.model().flatMap(id -> study.survey().catalog().item(id, TankSize.class));
    Optional<Pressure> vacuum = tank.roofVacuum().or(() -> size.flatMap(TankSize::vacuum));
    Optional<Pressure> pressure = tank.roofPressure().or(() -> size.flatMap(TankSize::pressure));
    return new BreathingResult(
        tank.id(),
        in,
        out,
        tank.ventBore().map(bore -> new RoofVent(bore, drawsAt).across(in.value())),
        tank.ventBore().map(bore -> new RoofVent(bore, liftsAt).across(out.value())),
        vacuum,
        pressure,
        larger(bore(in, vacuum, drawsAt), bore(out, pressure, liftsAt)));
  }

  private static Volume shell(Tank tank) {
    return new RoundTank(tank.diameter()).between(Length.ofFeet(0), tank.shellHeight()).value();
  }

  private LiquidRate truck() {
    return study.lease().practice().truckDraws().orElse(Defaults.TRUCK_DRAWS);
  }

  private LiquidRate pumps() {
    return CaseStudy.barrels(Injections.allPumps(study));
  }

  /** Of every vessel whose water comes here. */
  private LiquidRate water(Tank tank) {
    double sum =
        study.feeding(tank, Service.WATER_LEG).stream()
            .mapToDouble(v -> study.designWater(v).value().cubicMetresPerSecond())
            .sum();
    return CaseStudy.barrels(sum);
  }

  private static Optional<Computed<Length>> bore(
      Computed<GasRate> air, Optional<Pressure> holds, Pressure lifts) {
    return holds
        .map(h -> h.pascals() - lifts.pascals())
        .filter(room -> room > 0)
        .map(
            room ->
                RoofVent.leastBore(
                    air.value(),
                    Pressure.of(
                        Unit.OUNCE_PER_SQUARE_INCH.fromSi(room), Unit.OUNCE_PER_SQUARE_INCH)));
  }

  /** Only where both are known: half an answer would be taken for a whole one. */
  private static Optional<Computed<Length>> larger(
      Optional<Computed<Length>> a, Optional<Computed<Length>> b) {
    return a.flatMap(one -> b.map(two -> one.value().metres() >= two.value().metres() ? one : two));
  }
}
