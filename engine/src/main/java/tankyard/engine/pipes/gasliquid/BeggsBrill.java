package tankyard.engine.pipes.gasliquid;

import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.fluids.Water;
import tankyard.engine.pipes.FrictionFactor;

/**
 * Gas and liquid in one pipe by Beggs and Brill 1973: flow pattern, hold-up on any slope, friction
 * and acceleration.
 *
 * <p>From tests with air and water in 1 and 1 1/2 in acrylic pipe; for oil-field sizes it is an
 * extrapolation that the trade lives with. Friction is that of the unslipped mixture times {@code
 * exp S}, {@code S = ln y / (-0.0523 + 3.182 ln y - 0.8725 ln^2 y + 0.01853 ln^4 y)}, or {@code
 * ln(2.2 y - 1.2)} where y is between 1 and 1.2; {@code y = l / H^2}. The formula has a pole near y
 * = 0.00025; below y = 0.01 it is held. Hold-up jumps where patterns meet.
 *
 * <p>With one of the two missing it is Darcy-Weisbach for the other.
 *
 * @param payne multiplies the hold-up by 0.924 uphill and 0.685 downhill (Payne and others 1979,
 *     from memory), for which the original is known to be too large; it jumps at level
 */
public record BeggsBrill(double boreM, double roughnessM, boolean payne) {
  private static final double PAYNE_UP = 0.924;
  private static final double PAYNE_DOWN = 0.685;
  static final double LEAST_Y = 0.01;

  public BeggsBrill {
    if (!(boreM > 0 && roughnessM >= 0 && roughnessM < boreM / 2)) {
      throw new IllegalArgumentException(
          "A pipe needs a bore and a wall that leaves it open: " + boreM + " m, " + roughnessM);
    }
  }

  /** The method as first published. */
  public static BeggsBrill original(double boreM, double roughnessM) {
    return new BeggsBrill(boreM, roughnessM, false);
  }

  /**
   * The loss where the pipe rises at {@code slope}.
   *
   * @param liquidMPerS superficial velocity of the liquid: its rate over the whole bore
   * @param gasMPerS superficial velocity of the gas, at the pressure here
   * @param slope radians from level in the direction of flow, up above zero
   */
  public Gradient at(
      double liquidMPerS, double gasMPerS, Phases phases, double slope, AbsolutePressure pressure) {
    if (!(liquidMPerS >= 0 && gasMPerS >= 0 && liquidMPerS + gasMPerS > 0)) {
      throw new IllegalArgumentException(
          "Gas and liquid must move forward, and one of them must move: "
              + liquidMPerS
              + ", "
              + gasMPerS
              + " m/s");
    }
    double mixture = liquidMPerS + gasMPerS;
    double part = liquidMPerS / mixture;
    HoldUpHere here = holdUp(liquidMPerS, mixture, part, phases, slope);
    double slipping = blend(here.holdUp, density(phases), phases.gas().densityKgPerM3());
    return new Gradient(
        here.pattern,
        part,
        here.holdUp,
        mixture,
        slipping,
        slipping * Water.STANDARD_GRAVITY * Math.sin(slope),
        friction(mixture, part, here.holdUp, phases),
        slipping * mixture * gasMPerS / pressure.pascals());
  }

  private HoldUpHere holdUp(
      double liquidMPerS, double mixture, double part, Phases phases, double slope) {
    if (part == 0 || part == 1) {
      return new HoldUpHere(part == 0 ? FlowPattern.GAS : FlowPattern.LIQUID, part);
    }
    double froude = mixture * mixture / (Water.STANDARD_GRAVITY * boreM);
    HoldUp law = new HoldUp(part, froude, velocityNumber(liquidMPerS, phases));
    PatternMap map = PatternMap.at(part);
    FlowPattern pattern = map.pattern(froude);
    if (pattern != FlowPattern.TRANSITION) {
      return new HoldUpHere(pattern, kept(law.onSlope(pattern, slope), part, slope));
    }
    double share = map.segregatedShare(froude);
    double between =
        share * kept(law.onSlope(FlowPattern.SEGREGATED, slope), part, slope)
            + (1 - share) * kept(law.onSlope(FlowPattern.INTERMITTENT, slope), part, slope);
    return new HoldUpHere(pattern, between);
  }

  /** What a pipe can hold; with Payne's factors never less than the liquid's part of the flow. */
  private double kept(double holdUp, double part, double slope) {
    if (!payne) {
      return Math.min(1, Math.max(Math.min(part, Gradient.LEAST_HOLD_UP), holdUp));
    }
    return Math.min(1, Math.max(part, payneFactor(slope) * holdUp));
  }

  static double payneFactor(double slope) {
    return slope > 0 ? PAYNE_UP : slope < 0 ? PAYNE_DOWN : 1;
  }

  static double velocityNumber(double liquidMPerS, Phases phases) {
    double tension = Water.STANDARD_GRAVITY * phases.tensionNPerM();
    return liquidMPerS * Math.pow(density(phases) / tension, 0.25);
  }

  private double friction(double mixture, double part, double holdUp, Phases phases) {
    double density = blend(part, density(phases), phases.gas().densityKgPerM3());
    double viscosity = blend(part, phases.liquid().viscosityPaS(), phases.gas().viscosityPaS());
    double reynolds = density * mixture * boreM / viscosity;
    double plain = FrictionFactor.at(reynolds, roughnessM / boreM).factor();
    double factor = part == 0 ? plain : plain * Math.exp(slip(part, holdUp));
    return factor * density * mixture * mixture / (2 * boreM);
  }

  static double slip(double part, double holdUp) {
    double y = Math.max(LEAST_Y, part / (holdUp * holdUp));
    if (y == 1) {
      return 0;
    }
    if (y > 1 && y < 1.2) {
      return Math.log(2.2 * y - 1.2);
    }
    double log = Math.log(y);
    double square = log * log;
    return log / (-0.0523 + 3.182 * log - 0.8725 * square + 0.01853 * square * square);
  }

  private static double density(Phases phases) {
    return phases.liquid().densityKgPerM3();
  }

  private static double blend(double part, double liquid, double gas) {
    return part * liquid + (1 - part) * gas;
  }

  private record HoldUpHere(FlowPattern pattern, double holdUp) {}
}
