package tankyard.engine.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.LegRun;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** What an oil leg needs, with its working. */
final class OilLegs {
  private static final Source SOURCE =
      Source.definition("hydrostatics and line loss from the regulator to the oil tank");

  private OilLegs() {}

  static OilLeg leg(
      CaseStudy study,
      LegRun run,
      Optional<OilLeg.InCase> otherSeason,
      Optional<Pressure> setting) {
    Computed<Pressure> need = need(study, run);
    return new OilLeg(
        run.runs().get(0).laid().id(),
        study.designCase().id(),
        need,
        otherSeason,
        setting.map(s -> s.pascals() > need.value().pascals()).orElse(false));
  }

  static Computed<Pressure> need(CaseStudy study, LegRun run) {
    return Computed.of(Pressure.psiFromPascals(run.needPa()), () -> working(study, run));
  }

  private static Working working(CaseStudy study, LegRun run) {
    List<Working> from = new ArrayList<>();
    run.runs().forEach(r -> from.add(r.friction().working()));
    return Working.of(
            "What the oil leg needs at the regulator",
            "P",
            "0.4331*SGo*(zt-zr)+f",
            Unit.PSI,
            SOURCE,
            Term.number("SGo", "gravity of the oil", study.oil().liquid().specificGravity()),
            Term.of("zt", "what governs", Unit.FOOT.fromSi(run.controlM()), Unit.ELEVATION_FOOT),
            Term.of("zr", "regulator", Unit.FOOT.fromSi(run.startM()), Unit.ELEVATION_FOOT),
            Term.of("f", "line loss", Unit.PSI.fromSi(run.frictionPa()), Unit.PSI))
        .from(from);
  }
}
