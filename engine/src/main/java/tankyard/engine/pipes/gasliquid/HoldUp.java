package tankyard.engine.pipes.gasliquid;

/**
 * The part of the pipe that liquid fills: {@code H = a l^b / Fr^c}, not below l, times {@code 1 + C
 * (sin 1.8 t - sin^3 1.8 t / 3)} for the slope t, {@code C = (1 - l) ln(d l^e N^f Fr^g)}, not below
 * zero. Beggs and Brill 1973.
 *
 * @param liquidPart l, of the flow
 * @param froude Fr
 * @param velocityNumber N, the liquid's
 */
record HoldUp(double liquidPart, double froude, double velocityNumber) {
  private static final double[] SEGREGATED = {0.98, 0.4846, 0.0868};
  private static final double[] INTERMITTENT = {0.845, 0.5351, 0.0173};
  private static final double[] DISTRIBUTED = {1.065, 0.5824, 0.0609};
  private static final double[] SEGREGATED_UP = {0.011, -3.768, 3.539, -1.614};
  private static final double[] INTERMITTENT_UP = {2.96, 0.305, -0.4473, 0.0978};
  private static final double[] DOWN = {4.70, -0.3692, 0.1244, -0.5056};

  /** In a level pipe. */
  double level(FlowPattern pattern) {
    double[] k = levelConstants(pattern);
    return Math.min(
        1, Math.max(k[0] * Math.pow(liquidPart, k[1]) / Math.pow(froude, k[2]), liquidPart));
  }

  /** On a slope, radians, up above zero; not limited yet to what a pipe can hold. */
  double onSlope(FlowPattern pattern, double slope) {
    double s = Math.sin(1.8 * slope);
    return level(pattern) * (1 + inclination(pattern, slope) * (s - s * s * s / 3));
  }

  private double inclination(FlowPattern pattern, double slope) {
    if (!inclined(pattern, slope)) {
      return 0;
    }
    double[] k = slopeConstants(pattern, slope);
    double log =
        Math.log(k[0])
            + k[1] * Math.log(liquidPart)
            + k[2] * Math.log(velocityNumber)
            + k[3] * Math.log(froude);
    return Math.max(0, (1 - liquidPart) * log);
  }

  static boolean inclined(FlowPattern pattern, double slope) {
    return slope < 0 || (slope > 0 && pattern != FlowPattern.DISTRIBUTED);
  }

  static double[] levelConstants(FlowPattern pattern) {
    return switch (pattern) {
      case SEGREGATED -> SEGREGATED;
      case INTERMITTENT -> INTERMITTENT;
      case DISTRIBUTED -> DISTRIBUTED;
      default -> throw new IllegalArgumentException("No hold-up law for " + pattern.words());
    };
  }

  static double[] slopeConstants(FlowPattern pattern, double slope) {
    if (slope < 0) {
      return DOWN;
    }
    return pattern == FlowPattern.SEGREGATED ? SEGREGATED_UP : INTERMITTENT_UP;
  }
}
