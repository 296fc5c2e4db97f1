package tankyard.engine.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Vessel;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** Everything about one case with the separators' gauges at given readings. */
public final class CaseReport {
  private static final Source SOURCE =
      Source.definition("gauge reading with lift and line loss on the way");

  private final CaseStudy study;
  private final Map<String, Double> gaugePa;

  private CaseReport(CaseStudy study, Map<String, Double> gaugePa) {
    this.study = study;
    this.gaugePa = gaugePa;
  }

  /**
   * Works a case out.
   *
   * @param gaugePa reading by separator, at no oil flow
   */
  public static CaseResult of(CaseStudy study, Map<String, Double> gaugePa) {
    return new CaseReport(study, gaugePa).result();
  }

  private CaseResult result() {
    GatheringState gathering = study.gatheringAt(gaugePa);
    Optional<Restarts> restarts = Restarts.of(study, gathering, gaugePa);
    InjectionNet injection = InjectionNet.of(study);
    Map<String, LineRun> runs = new LinkedHashMap<>();
    gathering.runs().forEach(r -> runs.put(r.laid().id(), r));
    for (Vessel vessel : study.survey().vessels()) {
      double warmest = gathering.warmestInto(vessel.id()).orElse(0);
      study.waterLegs(vessel).forEach(leg -> addHarder(leg, warmest, runs));
      study.oilLegs(vessel).forEach(leg -> addHarder(leg, warmest, runs));
    }
    List<InjectionResult> injections = Injections.of(study, injection);
    Suctions.lines(study, runs);
    injection.runs().forEach(r -> runs.put(r.laid().id(), r));
    List<SeparatorResult> separators =
        study.survey().separators().stream()
            .map(s -> SeparatorTimes.of(study, s, gaugePa.getOrDefault(s.id(), 0.0)))
            .toList();
    return new CaseResult(
        study.designCase(),
        inDrawnOrder(runs).stream().map(run -> line(run, gathering, restarts)).toList(),
        wells(gathering, restarts),
        separators,
        study.survey().gunBarrels().stream()
            .flatMap(g -> GunBarrelStudy.of(study, g).stream())
            .toList(),
        Storage.of(study),
        Overflows.of(study),
        Switches.of(study),
        TankBreathing.of(study, new TankGas(study, gaugePa)),
        injections,
        SharedWell.of(study, injections),
        Suctions.of(study),
        SharedLines.of(study, gathering),
        TreaterResult.of(study),
        CaseCautions.of(study, inDrawnOrder(runs), separators, UntypedHeat.of(study, gathering)),
        audits(gathering, injection));
  }

  private static List<NetworkAudit> audits(GatheringState gathering, InjectionNet injection) {
    List<NetworkAudit> audits = new ArrayList<>();
    audits.add(NetworkAudit.of("gathering", gathering.audit()));
    injection.audit().map(audit -> NetworkAudit.of("injection", audit)).ifPresent(audits::add);
    return audits;
  }

  private static LineResult line(
      LineRun run, GatheringState gathering, Optional<Restarts> restarts) {
    LineResult line = run.result();
    return run.laid().line().service() == Service.FLOW_LINE
        ? line.withOilCarries(gathering.oilCarries(run))
            .withRestart(restarts.flatMap(r -> r.line(line.lineId())))
        : line;
  }

  /**
   * A line that serves two tanks shows the harder of the two. Its pipe is rated as warm as the
   * warmest that comes into the vessel: how much that cools there is not worked out.
   */
  private static void addHarder(LegRun leg, double warmestK, Map<String, LineRun> runs) {
    for (LineRun run : leg.runs()) {
      runs.merge(
          run.laid().id(),
          run.ratedAt(warmestK),
          (a, b) -> b.march().upstreamPascals() > a.march().upstreamPascals() ? b : a);
    }
  }

  private List<LineRun> inDrawnOrder(Map<String, LineRun> runs) {
    return study.survey().laid().keySet().stream()
        .filter(runs::containsKey)
        .map(runs::get)
        .toList();
  }

  private List<WellResult> wells(GatheringState gathering, Optional<Restarts> restarts) {
    List<WellResult> found = new ArrayList<>();
    for (String id : gathering.wellIds()) {
      gathering
          .separatorOf(id)
          .flatMap(study.survey()::vessel)
          .flatMap(s -> well(id, s, gathering))
          .map(well -> well.withRestart(restarts.flatMap(r -> r.well(id))))
          .ifPresent(found::add);
    }
    return found;
  }

  private Optional<WellResult> well(String id, Vessel vessel, GatheringState gathering) {
    Optional<WellLoad> load = study.load(id, gathering, vessel);
    double gauge = study.holdsPa(vessel, gaugePa);
    return load.map(
        l -> {
          WellFlow well = study.well(id);
          return new WellResult(
              id,
              vessel.id(),
              CaseStudy.barrels(well.fluid()),
              box(l, gauge, words(vessel), gathering.boxPa(id)),
              Pressure.psiFromPascals(gauge),
              Pressure.psiFromPascals(l.liftPa()),
              Pressure.psiFromPascals(l.frictionPa()),
              well.well().boxLimit(),
              Optional.empty());
        });
  }

  private static String words(Vessel vessel) {
    return vessel instanceof GunBarrel ? "weight of the liquid above the inlet" : "gauge reading";
  }

  private static Computed<Pressure> box(WellLoad load, double gaugePa, String words, double boxPa) {
    double from = load.fromGauge() ? gaugePa : 0;
    return Computed.of(
        Pressure.psiFromPascals(boxPa),
        () ->
            Working.of(
                    "Pressure at the stuffing box",
                    "P",
                    "Pg+z+f",
                    Unit.PSI,
                    SOURCE,
                    Term.of(
                        "Pg",
                        load.fromGauge()
                            ? words
                            : "at the crest on the way, where the line runs part full",
                        Unit.PSI.fromSi(from),
                        Unit.PSI),
                    Term.of("z", "lift", Unit.PSI.fromSi(load.liftPa()), Unit.PSI),
                    Term.of("f", "line loss", Unit.PSI.fromSi(load.frictionPa()), Unit.PSI))
                .from(load.workings()));
  }
}
