package tankyard.engine.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Separator;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.Defaults;
import tankyard.engine.study.LegRun;
import tankyard.engine.study.VesselHead;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.valves.FloatPull;
import tankyard.engine.valves.FloatSpec;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** What the vessel itself allows: relief valve, nameplate, gauge and float. */
final class VesselLimits {
  private static final Source RELIEF =
      Source.commonPractice("keep a working vessel below 90 % of its relief setting");
  private static final Source TYPED = Source.lease("typed in this lease");

  private final CaseStudy study;
  private final Separator separator;

  VesselLimits(CaseStudy study, Separator separator) {
    this.study = study;
    this.separator = separator;
  }

  List<PressureLimit> all() {
    List<PressureLimit> found = new ArrayList<>();
    separator.relief().ifPresent(relief -> found.add(relief(relief)));
    separator
        .nameplate()
        .ifPresent(p -> found.add(asTyped(PressureLimit.Kind.NAMEPLATE, "nameplate", p)));
    separator
        .gaugeRange()
        .ifPresent(p -> found.add(asTyped(PressureLimit.Kind.GAUGE_RANGE, "gauge range", p)));
    floatSpec().ifPresent(spec -> found.add(floatPull(spec)));
    return found;
  }

  /** The float with its seat, where both are known. */
  Optional<FloatSpec> floatSpec() {
    return separator
        .dumpValve()
        .port()
        .flatMap(
            port ->
                separator
                    .dumpValve()
                    .floatBall()
                    .map(
                        ball ->
                            new FloatSpec(
                                ball.diameter(),
                                ball.weight(),
                                ball.lever(),
                                FloatSpec.USUAL_FRICTION,
                                port)));
  }

  private PressureLimit relief(Pressure relief) {
    double share = Defaults.reliefShare(study.lease().practice()).ratio();
    return limit(
        PressureLimit.Kind.RELIEF_VALVE,
        separator.name() + "'s relief valve",
        Computed.of(
            Pressure.ofPsi(share * relief.toPsi()),
            () ->
                Working.of(
                    "Most gauge reading: relief valve",
                    "P",
                    "n*R",
                    Unit.PSI,
                    RELIEF,
                    Term.number("n", "share of the setting kept below", share),
                    Term.of("R", "setting of the relief valve", relief, Unit.PSI))));
  }

  private PressureLimit asTyped(PressureLimit.Kind kind, String what, Pressure typed) {
    return limit(
        kind,
        separator.name() + "'s " + what,
        Computed.of(
            typed,
            () ->
                Working.of(
                    "Most gauge reading: " + what,
                    "P",
                    "L",
                    Unit.PSI,
                    TYPED,
                    Term.of("L", what, typed, Unit.PSI))));
  }

  private PressureLimit floatPull(FloatSpec spec) {
    return limit(
        PressureLimit.Kind.FLOAT_PULL,
        separator.name() + "'s float",
        legFull(pull(spec, study.brine().gravity().value())));
  }

  /** What its float can do; empty where port or float is not known. */
  Optional<FloatWork> floatWork() {
    return floatSpec().map(this::floatWork);
  }

  private FloatWork floatWork(FloatSpec spec) {
    FloatPull pull = pull(spec, study.brine().gravity().value());
    return new FloatWork(
        study.designCase().id(),
        pull.halfway(),
        pull.opening(),
        pull.closing(),
        legFull(pull),
        gauge(pull, 0, "nothing behind it"),
        fresher(spec));
  }

  private Optional<FloatWork.Fresher> fresher(FloatSpec spec) {
    Gravity today = study.lease().fluids().brine();
    Gravity other = separator.otherWater().orElse(Defaults.OTHER_WATER);
    if (other.specific() >= today.specific()) {
      return Optional.empty();
    }
    double asWarm = study.brine().gravity().value().specific() / today.specific();
    FloatPull pull = pull(spec, Gravity.of(other.specific() * asWarm, Unit.SPECIFIC_GRAVITY));
    return Optional.of(new FloatWork.Fresher(other, pull.halfway(), pull.opening(), legFull(pull)));
  }

  private FloatPull pull(FloatSpec spec, Gravity brine) {
    return new FloatPull(spec, brine, study.oil().gravity().value());
  }

  private Computed<Pressure> legFull(FloatPull pull) {
    double behindPa =
        study.waterLegs(separator).stream().mapToDouble(this::behindPa).min().orElse(0);
    return gauge(pull, behindPa, "the full leg behind it");
  }

  private Computed<Pressure> gauge(FloatPull pull, double behindPa, String behind) {
    Computed<Pressure> across = pull.most();
    VesselHead head = study.vessel(separator);
    double valveM = head.groundM() + separator.waterOutletHeight().metres();
    double downPa = head.fromGaugeTo(valveM);
    return Computed.of(
        Pressure.ofPsi(
            across.value().toPsi() - Unit.PSI.fromSi(downPa) + Unit.PSI.fromSi(behindPa)),
        () ->
            Working.of(
                    "Most gauge reading: the float's pull",
                    "P",
                    "dp-h+b",
                    Unit.PSI,
                    Source.definition("pressure across the seat, less what stands on it"),
                    Term.of("dp", "most across the seat", across.value(), Unit.PSI),
                    Term.of("h", "head from gauge to valve", Unit.PSI.fromSi(downPa), Unit.PSI),
                    Term.of("b", behind, Unit.PSI.fromSi(behindPa), Unit.PSI))
                .from(List.of(across.working())));
  }

  /** What a full leg pushes back with while nothing flows. */
  private double behindPa(LegRun leg) {
    return Math.max(0, study.brine().liquid().staticPascals(leg.controlM() - leg.startM()));
  }

  private PressureLimit limit(PressureLimit.Kind kind, String name, Computed<Pressure> gauge) {
    Pressure nothing = Pressure.ofPsi(0);
    return new PressureLimit(
        kind,
        separator.id(),
        name,
        Optional.empty(),
        study.designCase().id(),
        gauge,
        nothing,
        nothing,
        nothing,
        nothing,
        Optional.empty());
  }
}
