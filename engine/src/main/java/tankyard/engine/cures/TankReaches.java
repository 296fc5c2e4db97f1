package tankyard.engine.cures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.catalog.NextSize;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.lease.Tank;
import tankyard.engine.pipes.LineLaw;
import tankyard.engine.pipes.MinorLosses;
import tankyard.engine.pipes.PipePath;
import tankyard.engine.pipes.PipeRun;
import tankyard.engine.study.LegRun;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.window.PressureLimit;

/**
 * How far the water tank can stand. Its inlet and the separator keep their heights; the leg is as
 * long as asked, in the pipe it has and the next two sizes; its fittings stay. What the gauge must
 * read is lift + valve + margin as they are, and the line loss of that length; the valve's loss
 * follows the square of the rate. A crest that sets the least is told, since no distance mends it.
 */
final class TankReaches {
  private static final int SIZES = 3;
  private static final double[] RATES = {1, 1.5, 2};
  private static final double[] FEET = {500, 1000, 2000, 4000};

  private final CureSite site;
  private final PressureLimit atTank;
  private final LegRun leg;
  private final double gaugePsi;

  private TankReaches(CureSite site, PressureLimit atTank, LegRun leg, double gaugePsi) {
    this.site = site;
    this.atTank = atTank;
    this.leg = leg;
    this.gaugePsi = gaugePsi;
  }

  /**
   * Nothing where no leg leads to a tank, where no setting works and none is typed, or where others
   * send through the leg.
   */
  static List<TankReach> of(CureSite site) {
    return site.atTank()
        .flatMap(
            tank ->
                site.leg(tank)
                    .filter(leg -> !leg.isShared())
                    .flatMap(
                        leg -> gauge(site).map(psi -> new TankReaches(site, tank, leg, psi).all())))
        .orElse(List.of());
  }

  /** Why it is left out where others send through the leg. */
  static Optional<String> leftOut(CureSite site) {
    return site.atTank()
        .flatMap(site::leg)
        .filter(leg -> leg.isShared() && gauge(site).isPresent())
        .map(
            leg ->
                "How far "
                    + leg.tank().name()
                    + " can go is left out: "
                    + String.join(" and ", leg.sharedLines())
                    + (leg.sharedLines().size() == 1 ? " carries" : " carry")
                    + " what other separators send too, and how much of a longer leg they"
                    + " would share is not known. Draw it, and see.");
  }

  private static Optional<Double> gauge(CureSite site) {
    return site.window().setting().map(s -> s.gauge().toPsi());
  }

  private List<TankReach> all() {
    List<TankReach> found = new ArrayList<>();
    Optional<Pipe> pipe = Optional.of(leg.runs().get(0).laid().pipe());
    for (int i = 0; i < SIZES && pipe.isPresent(); i++) {
      found.add(reach(pipe.get()));
      pipe = NextSize.after(pipe.get(), site.catalog());
    }
    return found;
  }

  private TankReach reach(Pipe pipe) {
    List<TankReach.AtRate> rates = new ArrayList<>();
    for (double times : RATES) {
      double rate = leg.rate() * times;
      rates.add(
          new TankReach.AtRate(
              Fraction.ofRatio(times),
              LiquidRate.ofBarrelsPerDay(Unit.BARREL_PER_DAY.fromSi(rate)),
              longest(pipe, times)));
    }
    List<TankReach.AtDistance> needs = new ArrayList<>();
    for (double feet : FEET) {
      double line = Unit.PSI.fromSi(lossPa(pipe, leg.rate(), feet));
      double psi = Math.max(withoutLine(1) + line, outOfTheSeparator(1));
      needs.add(new TankReach.AtDistance(Length.ofFeet(feet), Pressure.ofPsi(psi)));
    }
    return new TankReach(
        pipe.id(), pipe.name(), Pressure.ofPsi(gaugePsi), rates, needs, drained(), crest());
  }

  /** Everything but the line's loss. */
  private double withoutLine(double times) {
    return atTank.lift().toPsi() + valveAndMargin(times);
  }

  /** A tank that lies low pulls nothing: the start of the leg asks for as much, however short. */
  private double outOfTheSeparator(double times) {
    return site.window().needed().stream()
        .filter(l -> l.kind() == PressureLimit.Kind.CREST && l.crest().isEmpty())
        .mapToDouble(l -> l.lift().toPsi() + valveAndMargin(times))
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  private double valveAndMargin(double times) {
    return atTank.valve().toPsi() * times * times + atTank.margin().toPsi();
  }

  private Optional<Length> longest(Pipe pipe, double times) {
    if (gaugePsi < outOfTheSeparator(times)) {
      return Optional.empty();
    }
    double budget = Unit.PSI.toSi(gaugePsi - withoutLine(times));
    double rate = leg.rate() * times;
    double fittings = lossPa(pipe, rate, 0);
    double perFoot = lossPa(pipe, rate, 1) - fittings;
    double feet = perFoot > 0 ? (budget - fittings) / perFoot : 0;
    return feet > 0 ? Optional.of(Length.ofFeet(feet)) : Optional.empty();
  }

  /** A leg of that length with the fittings it has. */
  private double lossPa(Pipe pipe, double rate, double feet) {
    Liquid liquid = leg.liquid().liquid();
    MinorLosses minor =
        leg.runs().stream()
            .map(r -> r.laid().law().runs().get(0).minor())
            .reduce(MinorLosses.NONE, MinorLosses::plus);
    double metres = Math.max(1e-3, Unit.FOOT.toSi(feet));
    PipeRun run =
        new PipeRun(
            pipe.bore().metres(), pipe.roughness().metres(), PipePath.straight(metres, 0), minor);
    return LineLaw.of(run).friction(liquid).drop(rate).pascals();
  }

  /** A tank filled from below asks for less while it stands where the pump stops. */
  private Pressure drained() {
    Tank tank = leg.tank();
    double feet =
        tank.entry() == Tank.Entry.BOTTOM
            ? Math.max(
                0,
                tank.overflowHeight().toFeet()
                    - Math.max(tank.inletHeight().toFeet(), leg.pumpOff().toFeet()))
            : 0;
    return Pressure.psiFromPascals(leg.liquid().liquid().staticPascals(Unit.FOOT.toSi(feet)));
  }

  private Optional<String> crest() {
    return site.window()
        .least()
        .filter(l -> l.kind() == PressureLimit.Kind.CREST)
        .map(CureSite::named);
  }
}
