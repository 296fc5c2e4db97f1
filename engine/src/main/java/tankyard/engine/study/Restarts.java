package tankyard.engine.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.lease.Fluids;
import tankyard.engine.lease.Vessel;
import tankyard.engine.pipes.GelRestart;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * What it takes to start the gathering lines again after all of them stood full until they were as
 * cold as the ground. Where the oil carries the water and the ground is below its pour point, each
 * line on a well's way must yield before the well moves anything; where water carries the oil
 * nothing gels.
 */
final class Restarts {
  private static final Source SOURCE =
      Source.definition("gauge reading, height, and the gel of every line on the way");

  private final CaseStudy study;
  private final GatheringState state;
  private final Pressure strength;
  private final Map<String, Restart> byLine = new HashMap<>();
  private final Map<String, Restart> byWell = new HashMap<>();

  private Restarts(CaseStudy study, GatheringState state, Pressure strength) {
    this.study = study;
    this.state = state;
    this.strength = strength;
  }

  /** Empty where nothing gels, or nobody typed how strong the gel is. */
  static Optional<Restarts> of(CaseStudy study, GatheringState state, Map<String, Double> gaugePa) {
    Fluids fluids = study.lease().fluids();
    if (fluids.gelStrength().isEmpty() || !isBelowPourPoint(study, study.ground())) {
      return Optional.empty();
    }
    Restarts restarts = new Restarts(study, state, fluids.gelStrength().get());
    for (String well : state.wellIds()) {
      state
          .separatorOf(well)
          .flatMap(
              id -> study.survey().vessels().stream().filter(v -> v.id().equals(id)).findFirst())
          .ifPresent(v -> restarts.walk(well, v, study.holdsPa(v, gaugePa)));
    }
    return Optional.of(restarts);
  }

  static boolean isBelowPourPoint(CaseStudy study, Temperature at) {
    return study.lease().fluids().pourPoint().filter(p -> at.kelvins() < p.kelvins()).isPresent();
  }

  Optional<Restart> line(String id) {
    return Optional.ofNullable(byLine.get(id));
  }

  Optional<Restart> well(String id) {
    return Optional.ofNullable(byWell.get(id));
  }

  /** From the vessel back to the well. */
  private void walk(String wellId, Vessel vessel, double gaugePa) {
    double liftPa = study.fromGaugeToInlet(vessel);
    List<Computed<Pressure>> gels = new ArrayList<>();
    List<LineRun> way = state.wayOf(wellId);
    for (int i = way.size() - 1; i >= 0; i--) {
      LineRun run = way.get(i);
      double riseM = run.laid().law().riseM() * (run.flow() >= 0 ? 1 : -1);
      liftPa += run.liquid().liquid().staticPascals(riseM);
      if (state.oilCarries(run)) {
        Computed<Pressure> gel = gel(run);
        gels.add(gel);
        Restart here = restart("where the line starts", gaugePa, liftPa, gels);
        byLine.merge(run.laid().id(), here, Restarts::harder);
      }
    }
    if (!gels.isEmpty()) {
      byWell.put(wellId, restart("at the stuffing box", gaugePa, liftPa, gels));
    }
  }

  private Computed<Pressure> gel(LineRun run) {
    return new GelRestart(strength, run.laid().law().lengthM(), run.laid().pipe().bore().metres())
        .pressure();
  }

  private static Restart harder(Restart a, Restart b) {
    return b.highest().value().pascals() > a.highest().value().pascals() ? b : a;
  }

  private static Restart restart(
      String where, double gaugePa, double liftPa, List<Computed<Pressure>> sofar) {
    List<Computed<Pressure>> gels = List.copyOf(sofar);
    double gelPa = gels.stream().mapToDouble(g -> g.value().pascals()).sum();
    return new Restart(
        gels.get(gels.size() - 1),
        Pressure.psiFromPascals(gelPa),
        sum(where, gaugePa, liftPa, gelPa, gels));
  }

  private static Computed<Pressure> sum(
      String where, double gaugePa, double liftPa, double gelPa, List<Computed<Pressure>> gels) {
    return Computed.of(
        Pressure.psiFromPascals(Math.max(0, gaugePa + liftPa + gelPa)),
        () ->
            Working.of(
                    "Pressure that starts the cold lines again, " + where,
                    "P",
                    "max(Pg+z+g,0)",
                    Unit.PSI,
                    SOURCE,
                    Term.of(
                        "Pg",
                        "gauge reading, or weight above a gun barrel's inlet",
                        Unit.PSI.fromSi(gaugePa),
                        Unit.PSI),
                    Term.of("z", "lift", Unit.PSI.fromSi(liftPa), Unit.PSI),
                    Term.of(
                        "g", "gel in every line from here on", Unit.PSI.fromSi(gelPa), Unit.PSI))
                .from(gels.stream().map(Computed::working).toList()));
  }
}
