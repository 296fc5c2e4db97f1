package tankyard.engine.window;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.stream.Stream;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.Separator;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.Defaults;
import tankyard.engine.study.LegRun;
import tankyard.engine.study.VesselGas;
import tankyard.engine.study.VesselHead;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;

/**
 * Finds the back-pressure window of each separator: the least is the largest need over all cases,
 * the most is the smallest limit over all cases, each worked from its own case's rates and
 * temperatures.
 */
public final class WindowFinder {
  private static final Comparator<PressureLimit> BY_GAUGE =
      Comparator.comparingDouble(l -> l.gauge().value().pascals());

  private final List<CaseStudy> cases;
  private final Separator separator;

  private WindowFinder(List<CaseStudy> cases, Separator separator) {
    this.cases = cases;
    this.separator = separator;
  }

  /**
   * The windows of all separators that stay.
   *
   * @param cases of one lease, all of them
   */
  public static List<Window> find(List<CaseStudy> cases) {
    return cases.isEmpty()
        ? List.of()
        : cases.get(0).survey().separators().stream()
            .map(s -> new WindowFinder(cases, s).window())
            .toList();
  }

  private Window window() {
    List<PressureLimit> needed = allNeeded();
    List<PressureLimit> allowed = allAllowed();
    return window(hardestNeeded(needed), hardestAllowed(allowed))
        .withByCase(cases.stream().map(study -> inCase(study, needed, allowed)).toList());
  }

  private static Window.InCase inCase(
      CaseStudy study, List<PressureLimit> needed, List<PressureLimit> allowed) {
    String id = study.designCase().id();
    return new Window.InCase(
        id,
        of(id, needed).max(BY_GAUGE).map(l -> l.gauge().value()),
        of(id, allowed).min(BY_GAUGE).map(l -> l.gauge().value()));
  }

  private static Stream<PressureLimit> of(String caseId, List<PressureLimit> limits) {
    return limits.stream().filter(l -> l.caseId().equals(caseId));
  }

  /** What must be reached, in every case. */
  private List<PressureLimit> allNeeded() {
    List<PressureLimit> needed = new ArrayList<>();
    cases.forEach(study -> needed.addAll(new LeastLimits(study, separator).all()));
    return needed;
  }

  /** The governing limit first. */
  private static List<PressureLimit> hardestNeeded(List<PressureLimit> needed) {
    List<PressureLimit> kept = governingCases(needed, BinaryOperator.maxBy(BY_GAUGE));
    kept.sort(BY_GAUGE.reversed());
    return kept;
  }

  /** What must not be passed, in every case. */
  private List<PressureLimit> allAllowed() {
    List<PressureLimit> allowed = new ArrayList<>();
    for (CaseStudy study : cases) {
      allowed.addAll(new BoxLimits(study, separator).all());
      allowed.addAll(new VesselLimits(study, separator).all());
      allowed.addAll(new RatingLimits(study, separator).all());
    }
    return allowed;
  }

  /** The governing limit first. */
  private static List<PressureLimit> hardestAllowed(List<PressureLimit> allowed) {
    List<PressureLimit> kept = governingCases(allowed, BinaryOperator.minBy(BY_GAUGE));
    kept.sort(BY_GAUGE);
    return kept;
  }

  /**
   * The room in the window of one separator, without the window's words.
   *
   * @param cases of one lease, with a water leg at that separator
   */
  public static Room room(List<CaseStudy> cases, String separatorId) {
    Separator separator =
        cases.get(0).survey().separators().stream()
            .filter(s -> s.id().equals(separatorId))
            .findFirst()
            .orElseThrow();
    WindowFinder finder = new WindowFinder(cases, separator);
    List<PressureLimit> needed = hardestNeeded(finder.allNeeded());
    List<PressureLimit> allowed = hardestAllowed(finder.allAllowed());
    Settings settings = finder.settings(needed, allowed, finder.oilNeed());
    return new Room(needed.get(0).gauge().value().toPsi(), settings.roomPsi());
  }

  private Settings settings(
      List<PressureLimit> needed, List<PressureLimit> allowed, Optional<OilNeed> oil) {
    return new Settings(
        needed.stream().findFirst().map(l -> l.gauge().value().toPsi()),
        allowed.stream().findFirst().map(l -> l.gauge().value().toPsi()),
        oil.map(o -> Unit.PSI.fromSi(o.run().needPa())).orElse(0.0),
        buildUp().toPsi(),
        gaugeOverRegulatorPsi());
  }

  private Pressure buildUp() {
    return separator.regulator().buildUp().orElse(Defaults.BUILD_UP);
  }

  private Window window(List<PressureLimit> needed, List<PressureLimit> allowed) {
    Optional<OilNeed> oil = oilNeed();
    Settings settings = settings(needed, allowed, oil);
    Optional<Setting> recommended = settings.recommended();
    Optional<Setting> typed = separator.regulator().setting().map(settings::typed);
    Optional<Setting> setting = typed.isPresent() ? typed : recommended;
    return new Window(
        separator.id(),
        separator.name(),
        needed.stream().findFirst(),
        allowed.stream().findFirst(),
        needed,
        allowed,
        needed.stream().filter(l -> l.kind() != PressureLimit.Kind.CREST).findFirst(),
        oil.map(o -> oilLeg(o, setting)),
        NotChecked.of(cases.get(0).survey(), separator),
        buildUp(),
        recommended,
        setting,
        floatWork(),
        gasBreak(setting.map(s -> s.gauge().pascals()).orElseGet(() -> highest(needed))),
        List.of());
  }

  /** In the case in which it can do least, and with fresher water in that in which it can then. */
  private Optional<FloatWork> floatWork() {
    List<FloatWork> works =
        cases.stream()
            .flatMap(study -> new VesselLimits(study, separator).floatWork().stream())
            .toList();
    Optional<FloatWork.Fresher> fresher =
        works.stream()
            .flatMap(work -> work.fresher().stream())
            .min(Comparator.comparingDouble(then -> then.legFull().value().pascals()));
    return works.stream()
        .min(Comparator.comparingDouble(work -> work.legFull().value().pascals()))
        .map(work -> work.withFresher(fresher));
  }

  private static double highest(List<PressureLimit> needed) {
    return needed.isEmpty() ? 0 : needed.get(0).gauge().value().pascals();
  }

  private Optional<GasBreak> gasBreak(double gaugePa) {
    List<String> broken = new ArrayList<>();
    VesselGas most = null;
    for (CaseStudy study : cases) {
      VesselGas gas =
          VesselGas.of(study, separator, gaugePa).filter(VesselGas::breaksFull).orElse(null);
      if (gas != null) {
        broken.add(study.designCase().id());
        most = most == null || gas.isMoreThan(most) ? gas : most;
      }
    }
    return Optional.ofNullable(most).map(gas -> new GasBreak(broken, gas));
  }

  /** Keeps, of each limit, the case in which it binds hardest. */
  private static List<PressureLimit> governingCases(
      List<PressureLimit> all, BinaryOperator<PressureLimit> harder) {
    Map<String, PressureLimit> kept = new LinkedHashMap<>();
    for (PressureLimit limit : all) {
      kept.merge(
          limit.kind() + " " + limit.name(), limit, (a, b) -> same(a, b) ? a : harder.apply(a, b));
    }
    return new ArrayList<>(kept.values());
  }

  /** The first of two cases that bind alike counts, so that the order of cases decides. */
  private static boolean same(PressureLimit a, PressureLimit b) {
    return BY_GAUGE.compare(a, b) == 0;
  }

  /** The oil leg and case that need the most at the regulator. */
  private Optional<OilNeed> oilNeed() {
    return oilNeed(cases.stream());
  }

  private Optional<OilNeed> oilNeed(Stream<CaseStudy> among) {
    return among
        .flatMap(study -> study.oilLegs(separator).stream().map(run -> new OilNeed(study, run)))
        .reduce((a, b) -> b.run().needPa() > a.run().needPa() ? b : a);
  }

  /** What the gauge reads more than the regulator holds: the oil that stands between the two. */
  private double gaugeOverRegulatorPsi() {
    VesselHead head = cases.get(0).vessel(separator);
    double regulatorM = head.groundM() + separator.oilOutletHeight().metres();
    return Unit.PSI.fromSi(-head.fromGaugeTo(regulatorM));
  }

  private OilLeg oilLeg(OilNeed worst, Optional<Setting> setting) {
    DesignCase.Season season = worst.study().designCase().season();
    Optional<OilLeg.InCase> other =
        oilNeed(cases.stream().filter(study -> study.designCase().season() != season))
            .map(OilNeed::inCase);
    return OilLegs.leg(worst.study(), worst.run(), other, setting.map(s -> s.regulator().value()));
  }

  /** An oil leg and a case. */
  private record OilNeed(CaseStudy study, LegRun run) {
    OilLeg.InCase inCase() {
      return new OilLeg.InCase(study.designCase().id(), OilLegs.need(study, run));
    }
  }
}
