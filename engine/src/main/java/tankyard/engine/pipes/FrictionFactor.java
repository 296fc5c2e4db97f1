package tankyard.engine.pipes;

/**
 * The Darcy friction factor of a round pipe, and how steeply friction grows.
 *
 * <p>Laminar up to Re 2000: {@code f = 64 / Re}. Turbulent from Re 4000: Colebrook 1939, {@code 1 /
 * sqrt f = -2 log10(e / 3.7 D + 2.51 / (Re sqrt f))}, solved to machine accuracy by Newton from
 * Haaland's explicit formula (1983; from memory). Between, nobody knows; here the logarithm of
 * {@code f Re^2} follows the cubic that meets both laws in value and slope, so that friction is
 * smooth and always grows with the flow.
 *
 * @param factor f
 * @param exponent {@code d ln(f Re^2) / d ln Re}: 1 laminar, near 2 in a rough pipe
 */
public record FrictionFactor(double factor, double exponent, FlowRegime regime) {
  public static final double LAMINAR_UP_TO = 2000;
  public static final double TURBULENT_FROM = 4000;

  private static final double TWO_OVER_LN10 = 2 / Math.log(10);
  private static final int MOST_STEPS = 20;

  /**
   * The factor at a Reynolds number above zero.
   *
   * @param relativeRoughness of the wall to the bore, 0 to 0.1
   */
  public static FrictionFactor at(double reynolds, double relativeRoughness) {
    if (!(reynolds > 0) || !(relativeRoughness >= 0)) {
      throw new IllegalArgumentException(
          "No friction factor at Re " + reynolds + ", roughness " + relativeRoughness);
    }
    if (reynolds <= LAMINAR_UP_TO) {
      return new FrictionFactor(64 / reynolds, 1, FlowRegime.LAMINAR);
    }
    return reynolds >= TURBULENT_FROM
        ? colebrook(reynolds, relativeRoughness)
        : between(reynolds, relativeRoughness);
  }

  /** Colebrook's factor at any Reynolds number, also below where it holds. */
  static FrictionFactor colebrook(double reynolds, double relativeRoughness) {
    double rough = relativeRoughness / 3.7;
    double smooth = 2.51 / reynolds;
    double x = -1.8 * Math.log10(Math.pow(rough, 1.11) + 6.9 / reynolds);
    for (int step = 0; step < MOST_STEPS; step++) {
      double inside = rough + smooth * x;
      double slope = 1 + TWO_OVER_LN10 * smooth / inside;
      double change = (x + 2 * Math.log10(inside)) / slope;
      x -= change;
      if (Math.abs(change) <= 1e-15 * x) {
        break;
      }
    }
    double part = TWO_OVER_LN10 * smooth / (rough + smooth * x);
    double exponent = 2 - 2 * part / (1 + part);
    return new FrictionFactor(1 / (x * x), exponent, FlowRegime.TURBULENT);
  }

  private static FrictionFactor between(double reynolds, double relativeRoughness) {
    FrictionFactor end = colebrook(TURBULENT_FROM, relativeRoughness);
    double width = Math.log(TURBULENT_FROM / LAMINAR_UP_TO);
    double t = Math.log(reynolds / LAMINAR_UP_TO) / width;
    double y0 = Math.log(64 * LAMINAR_UP_TO);
    double y1 = Math.log(end.factor * TURBULENT_FROM * TURBULENT_FROM);
    double m0 = width;
    double m1 = end.exponent * width;
    double t2 = t * t;
    double t3 = t2 * t;
    double y =
        (2 * t3 - 3 * t2 + 1) * y0
            + (t3 - 2 * t2 + t) * m0
            + (3 * t2 - 2 * t3) * y1
            + (t3 - t2) * m1;
    double slope = 6 * (t2 - t) * (y0 - y1) + (3 * t2 - 4 * t + 1) * m0 + (3 * t2 - 2 * t) * m1;
    double factor = Math.exp(y) / (reynolds * reynolds);
    return new FrictionFactor(factor, slope / width, FlowRegime.TRANSITION);
  }
}
