package tankyard.engine.window;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.DumpValve;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Tank;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.Defaults;
import tankyard.engine.study.LegRun;
import tankyard.engine.study.LineRun;
import tankyard.engine.study.VesselHead;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.valves.ValveLoss;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * What the gauge must at least read in one case, so that the design water gets into the tank: over
 * the tank's inlet or against its full level, and over every high point on the way with the line
 * loss only that far. Past a high point the line runs part full and its fall pulls nothing, so the
 * largest of these holds. Where the tank lies so low that its leg would pull, the start of the leg
 * is such a point too, whatever way the leg takes.
 */
final class LeastLimits {
  private static final Source SOURCE =
      Source.definition("hydrostatics with line, valve and margin added; no siphon credit");

  private final CaseStudy study;
  private final Separator separator;
  private final VesselHead vessel;
  private final Computed<Pressure> valve;
  private final Pressure margin;

  LeastLimits(CaseStudy study, Separator separator) {
    this.study = study;
    this.separator = separator;
    this.vessel = study.vessel(separator);
    this.margin = Defaults.margin(study.lease().practice());
    DumpValve dump = separator.dumpValve();
    Cv working = ValveLoss.atTravel(dump.cv(), dump.workingTravel().orElse(ValveLoss.USUAL_TRAVEL));
    this.valve =
        ValveLoss.at(
            working, study.designWater(separator).value(), study.brine().gravity().value());
  }

  List<PressureLimit> all() {
    List<PressureLimit> found = new ArrayList<>();
    for (LegRun leg : study.waterLegs(separator)) {
      found.add(atTank(leg));
      leg.highPoints().forEach(high -> found.add(atHighPoint(leg, high)));
      if (fallsToTheTank(leg)) {
        found.add(atStart(leg));
      }
    }
    found.sort(
        Comparator.comparingDouble((PressureLimit l) -> l.gauge().value().toPsi()).reversed());
    return found;
  }

  private PressureLimit atTank(LegRun leg) {
    boolean top = leg.tank().entry() == Tank.Entry.TOP;
    LineRun last = leg.runs().get(leg.runs().size() - 1);
    return limit(
        leg,
        top ? PressureLimit.Kind.TANK_INLET : PressureLimit.Kind.TANK_LEVEL,
        last.laid().id(),
        top ? leg.tank().name() + "'s inlet" : leg.tank().name() + " full to its overflow",
        Optional.empty(),
        leg.endM(),
        leg.wholeFrictionPa());
  }

  private PressureLimit atHighPoint(LegRun leg, LegRun.HighPoint high) {
    PressureLimit.Crest crest = new PressureLimit.Crest(high.along(), high.line().line().name());
    return limit(
        leg,
        PressureLimit.Kind.CREST,
        high.line().id(),
        crest.words(UnitSystem.FIELD),
        Optional.of(crest),
        high.elevationM(),
        high.frictionPa());
  }

  /** More than the line loses: then the liquid has at least to get out of the separator. */
  private boolean fallsToTheTank(LegRun leg) {
    double upPa = study.brine().liquid().staticPascals(leg.endM() - leg.startM());
    return upPa + leg.wholeFrictionPa() < 0;
  }

  private PressureLimit atStart(LegRun leg) {
    LineRun first = leg.runs().get(0);
    boolean governs = leg.crestLine().isPresent() && leg.controlM() == leg.startM();
    return limit(
        leg,
        PressureLimit.Kind.CREST,
        first.laid().id(),
        "the start of " + first.laid().line().name() + (governs ? ", which falls all the way" : ""),
        Optional.empty(),
        leg.startM(),
        0);
  }

  private PressureLimit limit(
      LegRun leg,
      PressureLimit.Kind kind,
      String thingId,
      String name,
      Optional<PressureLimit.Crest> crest,
      double controlM,
      double frictionPa) {
    double liftPa =
        study.brine().liquid().staticPascals(controlM - leg.startM())
            - vessel.fromGaugeTo(leg.startM());
    double totalPa = liftPa + frictionPa + valve.value().pascals() + margin.pascals();
    return new PressureLimit(
        kind,
        thingId,
        name,
        crest,
        study.designCase().id(),
        Computed.of(
            Pressure.psiFromPascals(totalPa), () -> working(leg, name, controlM, frictionPa)),
        Pressure.psiFromPascals(liftPa),
        Pressure.psiFromPascals(frictionPa),
        valve.value(),
        margin,
        band());
  }

  private Optional<Pressure> band() {
    return study
        .lease()
        .site()
        .heightAccuracy()
        .map(a -> Pressure.psiFromPascals(study.brine().liquid().staticPascals(a.metres())));
  }

  private Working working(LegRun leg, String name, double controlM, double frictionPa) {
    List<Working> from = new ArrayList<>();
    from.add(study.designWater(separator).working());
    leg.runs().forEach(run -> from.add(run.friction().working()));
    from.add(valve.working());
    return Working.of(
            "Least gauge reading: " + name,
            "P",
            "0.4331*(SGw*(zc-zi)-SGg*(zg-zi))+f+v+m",
            Unit.PSI,
            SOURCE,
            Term.number("SGw", "gravity of the brine", specific(study.brine().liquid())),
            Term.of("zc", name, Unit.FOOT.fromSi(controlM), Unit.ELEVATION_FOOT),
            Term.of(
                "zi", "interface in the separator", feet(vessel.interfaceM()), Unit.ELEVATION_FOOT),
            Term.number(
                "SGg", "gravity between interface and gauge", specific(vessel.atGauge().liquid())),
            Term.of("zg", "gauge", feet(vessel.gaugeM()), Unit.ELEVATION_FOOT),
            Term.of("f", "line loss that far", Unit.PSI.fromSi(frictionPa), Unit.PSI),
            Term.of("v", "lost in the dump valve", valve.value(), Unit.PSI),
            Term.of("m", "margin", margin, Unit.PSI))
        .from(from);
  }

  private static double specific(tankyard.engine.fluids.Liquid liquid) {
    return liquid.specificGravity();
  }

  private static double feet(double metres) {
    return Unit.FOOT.fromSi(metres);
  }
}
