package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.Service;
import tankyard.engine.pumps.PumpPower;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.wells.InjectionLaw;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Each pump with the well its injection line leads to. Pressures hold at the rate while the pump
 * runs; the day's water only sets the hours. Several pumps share the water by their rates.
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
    allPumps =
        study.lease().injectionPumps().stream()
            .filter(p -> p.status().stays())
            .mapToDouble(p -> p.rate().cubicMetresPerSecond())
            .sum();
  }

  static List<InjectionResult> of(CaseStudy study, List<LineRun> runs) {
    Injections injections = new Injections(study);
    List<InjectionResult> found = new ArrayList<>();
    for (LineRun run : runs) {
      if (run.laid().line().service() == Service.INJECTION) {
        injections.result(run).ifPresent(found::add);
      }
    }
    return found;
  }

  /** The injection lines at their pumps' rates. */
  static List<LineRun> lines(CaseStudy study) {
    List<LineRun> runs = new ArrayList<>();
    for (LaidLine line : study.survey().laid().values()) {
      if (line.line().service() != Service.INJECTION) {
        continue;
      }
      Optional<InjectionPump> pump = pump(study, line);
      Optional<InjectionWell> well = well(study, line);
      if (pump.isPresent() && well.isPresent()) {
        double rate = pump.get().rate().cubicMetresPerSecond();
        runs.add(
            LineRun.of(
                line,
                rate,
                "rate while the pump runs",
                study.brine(),
                law(well.get()).pascals(rate)));
      }
    }
    return runs;
  }

  private static Optional<InjectionPump> pump(CaseStudy study, LaidLine line) {
    return study.lease().injectionPumps().stream()
        .filter(p -> p.id().equals(line.line().from()))
        .findFirst();
  }

  private static Optional<InjectionWell> well(CaseStudy study, LaidLine line) {
    return study.lease().injectionWells().stream()
        .filter(w -> w.id().equals(line.line().to()))
        .findFirst();
  }

  private static InjectionLaw law(InjectionWell well) {
    return new InjectionLaw(well.pressureAtNoFlow(), well.resistance());
  }

  private Optional<InjectionResult> result(LineRun run) {
    InjectionPump pump = pump(study, run.laid()).orElseThrow();
    InjectionWell well = well(study, run.laid()).orElseThrow();
    if (pump.rate().cubicMetresPerSecond() == 0) {
      return Optional.empty();
    }
    Computed<Pressure> wellhead = law(well).wellhead(pump.rate());
    Computed<Pressure> discharge = discharge("Pump discharge pressure", wellhead, run);
    Fraction efficiency = pump.efficiency().orElse(Defaults.PUMP_EFFICIENCY);
    double share = pump.rate().cubicMetresPerSecond() / allPumps;
    LiquidRate water = CaseStudy.barrels(waterDay * share);
    return Optional.of(
        new InjectionResult(
            pump.id(),
            well.id(),
            pump.rate(),
            wellhead,
            discharge,
            run.friction().value(),
            PumpPower.brake(pump.rate(), discharge.value(), efficiency),
            PumpPower.hoursADay(water, pump.rate()),
            well.permitPressure().map(permit -> redLine(permit, run))));
  }

  private static Computed<Pressure> redLine(Pressure permit, LineRun run) {
    Computed<Pressure> typed =
        Computed.of(
            permit,
            () ->
                Working.of(
                    "Permit pressure at the wellhead",
                    "P",
                    "L",
                    Unit.PSI,
                    Source.lease("the permit, as typed"),
                    Term.of("L", "permit", permit, Unit.PSI)));
    return discharge("Red line of the pump's gauge", typed, run);
  }

  private static Computed<Pressure> discharge(
      String title, Computed<Pressure> wellhead, LineRun run) {
    Computed<Pressure> friction = run.friction();
    Computed<Pressure> lift = run.lift();
    return Computed.of(
        Pressure.ofPsi(wellhead.value().toPsi() + friction.value().toPsi() + lift.value().toPsi()),
        () ->
            Working.of(
                    title,
                    "P",
                    "Pw+f+z",
                    Unit.PSI,
                    SOURCE,
                    Term.of("Pw", "at the wellhead", wellhead.value(), Unit.PSI),
                    Term.of("f", "line loss", friction.value(), Unit.PSI),
                    Term.of("z", "lift from pump to well", lift.value(), Unit.PSI))
                .from(List.of(wellhead.working(), friction.working(), lift.working())));
  }
}
