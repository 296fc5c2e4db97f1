package tankyard.engine.tanks;

import java.util.List;
import tankyard.engine.fluids.Water;
import tankyard.engine.numeric.Roots;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * What an overflow or equalizer passes by gravity.
 *
 * <p>Two limits, the lesser counts. It must swallow its liquid and let air back past it: Froude
 * number {@code v / sqrt(g D)} no more than 0.31 (self-venting; from memory). And on its slope it
 * must carry it part full: Manning, {@code Q = A R^(2/3) sqrt(S) / n}. Both are for water-thin
 * liquid; cold thick oil passes less.
 *
 * @param bore inside diameter
 */
public record Overflow(Length bore) {
  /** Self-venting; from memory. */
  public static final double FROUDE = 0.31;

  /** How full a sloping pipe may run and still pass air above; common practice, no source. */
  public static final Fraction USUAL_FILLING = Fraction.ofPercent(75);

  /** Manning's n of steel pipe; from memory. */
  public static final double STEEL_N = 0.013;

  /** Manning's n of smooth plastic; from memory. */
  public static final double PLASTIC_N = 0.009;

  private static final Source SELF_VENTING =
      Source.memory("self-venting drain, Froude number 0.31");
  private static final Source MANNING = Source.published("Manning 1891, part-full circular pipe");
  private static final double FULLEST = 0.938;

  public Overflow {
    if (!(bore.metres() > 0)) {
      throw new IllegalArgumentException("An overflow needs a bore above zero");
    }
  }

  /** The self-venting limit. */
  public Computed<LiquidRate> selfVenting() {
    double d = bore.metres();
    double flow = FROUDE * Math.PI / 4 * d * d * Math.sqrt(Water.STANDARD_GRAVITY * d);
    return Computed.of(
        rate(flow),
        () ->
            Working.of(
                "What the overflow swallows and still lets air back",
                "Q",
                "0.31*pi/4*d^2*sqrt(386.0886*d)*86400/9702",
                Unit.BARREL_PER_DAY,
                SELF_VENTING,
                Term.of("d", "bore", bore, Unit.INCH)));
  }

  /** What it carries on a slope at a filling (depth over bore). */
  public Computed<LiquidRate> onSlope(Fraction slope, Fraction filling, double manningN) {
    requireSlope(slope, manningN);
    double depth = filling.ratio() * bore.metres();
    double flow = manning(depth, slope.ratio(), manningN);
    double half = halfAngle(filling.ratio());
    return Computed.of(
        rate(flow),
        () ->
            Working.of(
                "What the overflow carries on its slope",
                "Q",
                "A/n*(A/P)^(2/3)*sqrt(S)/1.840131e-6",
                Unit.BARREL_PER_DAY,
                MANNING,
                Term.of("A", "wetted area", areaM2(half), Unit.SQUARE_METRE),
                Term.of("P", "wetted edge", bore.metres() * half, Unit.METRE),
                Term.number("S", "slope", slope.ratio()),
                Term.number("n", "Manning's n", manningN)));
  }

  /** The lesser of both, with a word where it is the slope that binds. */
  public Computed<LiquidRate> capacity(Fraction slope, Fraction filling, double manningN) {
    Computed<LiquidRate> venting = selfVenting();
    Computed<LiquidRate> sloping = onSlope(slope, filling, manningN);
    boolean slopeBinds =
        sloping.value().cubicMetresPerSecond() < venting.value().cubicMetresPerSecond();
    if (!slopeBinds) {
      return venting;
    }
    return sloping.with(
        List.of(
            new Caution(
                "overflow-slope-binds",
                "The slope of "
                    + Figures.significant(slope.toPercent(), 3)
                    + " % holds the overflow to "
                    + Figures.significant(sloping.value().toBarrelsPerDay(), 4)
                    + " bbl/d; at a steeper slope it would swallow "
                    + Figures.significant(venting.value().toBarrelsPerDay(), 4)
                    + " bbl/d.")));
  }

  /** The slope on which it just carries a flow at a filling. */
  public Computed<Fraction> leastSlope(LiquidRate rate, Fraction filling, double manningN) {
    double flow = rate.cubicMetresPerSecond();
    double half = halfAngle(filling.ratio());
    if (!(half > 0 && manningN > 0)) {
      throw new IllegalArgumentException(
          "An overflow carries nothing at a filling of "
              + filling.toPercent()
              + " % and Manning's n of "
              + manningN);
    }
    double perRootSlope = manning(filling.ratio() * bore.metres(), 1, manningN);
    double root = flow / perRootSlope;
    return Computed.of(
        Fraction.ofPercent(100 * root * root),
        () ->
            Working.of(
                "Slope on which the overflow carries it",
                "S",
                "100*(Q*1.840131e-6*n/(A*(A/P)^(2/3)))^2",
                Unit.PERCENT,
                MANNING,
                Term.of("Q", "flow", rate, Unit.BARREL_PER_DAY),
                Term.of("A", "wetted area", areaM2(half), Unit.SQUARE_METRE),
                Term.of("P", "wetted edge", bore.metres() * half, Unit.METRE),
                Term.number("n", "Manning's n", manningN)));
  }

  /** The depth at which it carries a flow on a slope; the flow must fit. */
  public Length depthFor(LiquidRate rate, Fraction slope, double manningN) {
    requireSlope(slope, manningN);
    double wanted = rate.cubicMetresPerSecond();
    double highest = FULLEST * bore.metres();
    if (wanted > manning(highest, slope.ratio(), manningN)) {
      throw new IllegalArgumentException(
          Figures.significant(rate.toBarrelsPerDay(), 4)
              + " bbl/d do not fit into the pipe on that slope");
    }
    double depth =
        wanted == 0
            ? 0
            : Roots.between("depth", y -> manning(y, slope.ratio(), manningN) - wanted, 0, highest);
    return Length.of(depth, Unit.METRE);
  }

  private double manning(double depthM, double slope, double manningN) {
    double half = halfAngle(depthM / bore.metres());
    if (half == 0) {
      return 0;
    }
    double area = areaM2(half);
    double radius = area / (bore.metres() * half);
    return area / manningN * Math.pow(radius, 2.0 / 3) * Math.sqrt(slope);
  }

  private double areaM2(double half) {
    double r = bore.metres() / 2;
    return r * r * (half - Math.sin(half) * Math.cos(half));
  }

  private static double halfAngle(double filling) {
    return Math.acos(1 - 2 * Math.min(1, Math.max(0, filling)));
  }

  private static LiquidRate rate(double cubicMetresPerSecond) {
    return LiquidRate.ofBarrelsPerDay(Unit.BARREL_PER_DAY.fromSi(cubicMetresPerSecond));
  }

  private static void requireSlope(Fraction slope, double manningN) {
    if (!(slope.ratio() > 0 && manningN > 0)) {
      throw new IllegalArgumentException(
          "A gravity line needs a fall and a Manning n above zero: "
              + slope.toPercent()
              + " %, "
              + manningN);
    }
  }
}
