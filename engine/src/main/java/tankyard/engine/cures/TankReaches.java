package tankyard.engine.cures;

import java.util.ArrayList;
import java.util.Comparator;
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

  /** Nothing where no leg leads to a tank, or no setting works and none is typed. */
  static List<TankReach> of(CureSite site) {
    Optional<PressureLimit> tank =
        site.window().needed().stream()
            .filter(l -> l.kind() != PressureLimit.Kind.CREST)
            .max(Comparator.comparingDouble(l -> l.gauge().value().toPsi()));
    Optional<Pressure> gauge = site.window().setting().map(s -> s.gauge());
    if (tank.isEmpty() || gauge.isEmpty()) {
      return List.of();
    }
    return site.leg(tank.get())
        .map(leg -> new TankReaches(site, tank.get(), leg, gauge.get().toPsi()).all())
        .orElse(List.of());
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
      double psi = withoutLine(1) + Unit.PSI.fromSi(lossPa(pipe, leg.rate(), feet));
      needs.add(new TankReach.AtDistance(Length.ofFeet(feet), Pressure.ofPsi(psi)));
    }
    return new TankReach(
        pipe.id(), pipe.name(), Pressure.ofPsi(gaugePsi), rates, needs, drained(), crest());
  }

  /** Everything but the line's loss. */
  private double withoutLine(double times) {
    return atTank.lift().toPsi() + atTank.valve().toPsi() * times * times + atTank.margin().toPsi();
  }

  private Optional<Length> longest(Pipe pipe, double times) {
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

  /** A tank filled from below asks for less while it is empty. */
  private Pressure drained() {
    Tank tank = leg.tank();
    double feet =
        tank.entry() == Tank.Entry.BOTTOM
            ? Math.max(0, tank.overflowHeight().toFeet() - tank.inletHeight().toFeet())
            : 0;
    return Pressure.psiFromPascals(leg.liquid().liquid().staticPascals(Unit.FOOT.toSi(feet)));
  }

  private Optional<String> crest() {
    return site.window()
        .least()
        .filter(l -> l.kind() == PressureLimit.Kind.CREST)
        .map(PressureLimit::name);
  }
}
