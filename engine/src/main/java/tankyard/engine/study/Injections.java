package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.pumps.PumpPower;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.wells.ScreeningLimit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Each pump with each well its water reaches. Pressures hold at the rate while the pump runs; the
 * day's water only sets the hours. Several pumps share the water by their rates.
 */
final class Injections {
  private static final Source SOURCE =
      Source.definition("wellhead pressure with line loss and height between pump and well");

  private final CaseStudy study;
  private final double waterDay;
  private final double allPumps;

  private Injections(CaseStudy study) {
    this.study = study;
    waterDay = study.wells().stream().mapToDouble(WellFlow::waterDay).sum();
    allPumps = allPumps(study);
  }

  /** What all pumps that stay put away together while they run, m3/s. */
  static double allPumps(CaseStudy study) {
    return study.lease().injectionPumps().stream()
        .filter(p -> p.status().stays())
        .mapToDouble(p -> p.rate().cubicMetresPerSecond())
        .sum();
  }

  static List<InjectionResult> of(CaseStudy study, InjectionNet net) {
    Injections injections = new Injections(study);
    return net.ways().stream().map(injections::result).toList();
  }

  private InjectionResult result(InjectionNet.Way way) {
    InjectionPump pump = way.pump();
    InjectionWell well = way.well();
    LiquidRate total = CaseStudy.barrels(way.intoWell());
    Computed<Pressure> wellhead = InjectionNet.law(well).wellhead(total);
    Computed<Pressure> discharge = discharge("Pump discharge pressure", wellhead, way);
    Fraction efficiency = pump.efficiency().orElse(Defaults.PUMP_EFFICIENCY);
    LiquidRate water = CaseStudy.barrels(waterDay * pump.rate().cubicMetresPerSecond() / allPumps);
    Optional<Computed<Pressure>> limit = limit(well);
    return new InjectionResult(
        pump.id(),
        well.id(),
        pump.rate(),
        CaseStudy.barrels(way.intoWell() * way.share()),
        wellhead,
        discharge,
        Pressure.psiFromPascals(pascals(way, LineRun::friction)),
        PumpPower.brake(pump.rate(), discharge.value(), efficiency),
        PumpPower.hoursADay(water, pump.rate()),
        limit,
        limit.map(l -> discharge("Red line of the pump's gauge", l, way)));
  }

  /** The permit as typed; else the screening form where the depth is known. */
  private Optional<Computed<Pressure>> limit(InjectionWell well) {
    Optional<Computed<Pressure>> typed =
        well.permitPressure()
            .map(
                permit ->
                    Computed.of(
                        permit,
                        () ->
                            Working.of(
                                "Permit pressure at the wellhead",
                                "P",
                                "L",
                                Unit.PSI,
                                Source.lease("the permit, as typed"),
                                Term.of("L", "permit", permit, Unit.PSI))));
    return typed.or(
        () -> well.depth().map(d -> ScreeningLimit.of(d, study.lease().fluids().brine())));
  }

  private static double pascals(
      InjectionNet.Way way, java.util.function.Function<LineRun, Computed<Pressure>> part) {
    return way.runs().stream().mapToDouble(r -> part.apply(r).value().pascals()).sum();
  }

  private static Computed<Pressure> discharge(
      String title, Computed<Pressure> wellhead, InjectionNet.Way way) {
    Pressure friction = Pressure.psiFromPascals(pascals(way, LineRun::friction));
    Pressure lift = Pressure.psiFromPascals(pascals(way, LineRun::lift));
    return Computed.of(
        Pressure.ofPsi(wellhead.value().toPsi() + friction.toPsi() + lift.toPsi()),
        () ->
            Working.of(
                    title,
                    "P",
                    "Pw+f+z",
                    Unit.PSI,
                    SOURCE,
                    Term.of("Pw", "at the wellhead", wellhead.value(), Unit.PSI),
                    Term.of("f", "line loss", friction, Unit.PSI),
                    Term.of("z", "lift from pump to well", lift, Unit.PSI))
                .from(workings(wellhead, way)));
  }

  private static List<Working> workings(Computed<Pressure> wellhead, InjectionNet.Way way) {
    List<Working> all = new ArrayList<>(List.of(wellhead.working()));
    way.runs().stream()
        .flatMap(r -> Stream.of(r.friction(), r.lift()))
        .forEach(c -> all.add(c.working()));
    return all;
  }
}
