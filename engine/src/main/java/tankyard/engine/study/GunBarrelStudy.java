package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.Service;
import tankyard.engine.tanks.RoundTank;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;

/** Works out one gun barrel in one case. */
final class GunBarrelStudy {
  private final CaseStudy study;
  private final GunBarrel barrel;
  private final GunBarrelCut cut;
  private final GunBarrelHead head;
  private final Computed<LiquidRate> surge;
  private final GunBarrelLegs legs;
  private final double bottomM;
  private final List<LegRun> waterLegs;

  private GunBarrelStudy(CaseStudy study, GunBarrel barrel) {
    this.study = study;
    this.barrel = barrel;
    this.head = study.head(barrel);
    this.cut = GunBarrelCuts.of(barrel, study.lease().fluids());
    this.surge = study.designWater(barrel);
    this.legs =
        new GunBarrelLegs(
            barrel, cut.stands().value(), study, surge.value().cubicMetresPerSecond());
    this.bottomM = study.survey().ground().metresUnder(barrel);
    this.waterLegs = study.waterLegs(barrel);
  }

  /** Empty where the oil would not float. */
  static Optional<GunBarrelResult> of(CaseStudy study, GunBarrel barrel) {
    return study.oilFloats()
        ? Optional.of(new GunBarrelStudy(study, barrel).result())
        : Optional.empty();
  }

  private GunBarrelResult result() {
    List<WellFlow> wells = study.wellsOf(barrel.id());
    double oilFlow = study.oilInto(barrel);
    LiquidRate oil = CaseStudy.barrels(oilFlow);
    LiquidRate water = CaseStudy.barrels(study.waterInto(barrel));
    RoundTank inside = new RoundTank(barrel.diameter());
    Computed<Volume> below = inside.between(Length.ofFeet(0), head.level());
    Computed<Volume> above = inside.between(head.level(), barrel.oilOutletHeight());
    return new GunBarrelResult(
        barrel.id(),
        oil,
        water,
        surge,
        cut,
        legs.interfaceFor(Length.ofFeet(0)),
        leg(oilFlow),
        falls(),
        above.value(),
        below.value(),
        stays(above, oil),
        stays(below, water),
        head.atBottom(),
        head.onWells(study.mixOf(wells)));
  }

  private static Optional<Computed<Time>> stays(Computed<Volume> layer, LiquidRate rate) {
    return rate.toBarrelsPerDay() > 0
        ? Optional.of(RoundTank.lasts(layer, rate))
        : Optional.empty();
  }

  private List<GunBarrelFall> falls() {
    List<GunBarrelFall> found = new ArrayList<>();
    waterLegs.forEach(run -> found.add(waterFall(run)));
    study.oilLegs(barrel).forEach(run -> found.add(oilFall(run)));
    return found;
  }

  private GunBarrelFall waterFall(LegRun run) {
    return new GunBarrelFalls(run, bottomM, cut.stands().value()).fall();
  }

  private GunBarrelFall oilFall(LegRun run) {
    return new GunBarrelFalls(run, bottomM, barrel.oilOutletHeight()).fall();
  }

  private Optional<GunBarrelResult.AtSurge> leg(double oilFlow) {
    return study.survey().catalog().pipe(barrel.legPipe()).map(pipe -> leg(pipe, oilFlow));
  }

  private GunBarrelResult.AtSurge leg(Pipe pipe, double oilFlow) {
    Computed<Length> loss = legs.loss(pipe);
    Optional<LegRun> toTank =
        waterLegs.stream()
            .min(Comparator.comparingDouble(r -> waterFall(r).spare().value().metres()));
    double backUp =
        toTank.map(r -> Math.max(0, -waterFall(r).spare().value().toFeet())).orElse(0.0);
    Computed<LiquidRate> most = legs.most(pipe);
    double over =
        Math.max(0, surge.value().cubicMetresPerSecond() - most.value().cubicMetresPerSecond());
    Pipe down = barrel.downcomerPipe().flatMap(study.survey().catalog()::pipe).orElse(pipe);
    return new GunBarrelResult.AtSurge(
        loss,
        legs.interfaceFor(Length.ofFeet(loss.value().toFeet() + backUp)),
        most,
        CaseStudy.barrels(over),
        over > 0 ? oilSpare(oilFlow + over) : Optional.empty(),
        legs.downcomer(down),
        legs.sizes(pipe, toTank));
  }

  /** What goes over is water for the most part, so it is taken as such. */
  private Optional<Length> oilSpare(double rate) {
    return Leg.of(study.survey(), barrel, Service.OIL_LEG).stream()
        .map(
            leg ->
                LegRun.of(
                    leg,
                    rate,
                    "the oil and what of the surge goes over with it",
                    study.brine(),
                    study.survey().ground().metresUnder(leg.tank()),
                    SharedLegs.beside(study.survey(), barrel, Service.OIL_LEG, study::oilInto)))
        .map(run -> oilFall(run).spare().value())
        .min(Comparator.comparingDouble(Length::metres));
  }
}
