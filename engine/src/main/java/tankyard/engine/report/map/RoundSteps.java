package tankyard.engine.report.map;

/** Steps that a person counts in: 1, 2 or 5 times a power of ten. */
final class RoundSteps {
  private static final double[] STEPS = {1, 2, 5, 10};

  private RoundSteps() {}

  /** The smallest such step that is at least this. */
  static double atLeast(double wanted) {
    double power = Math.pow(10, Math.floor(Math.log10(wanted)));
    for (double step : STEPS) {
      if (step * power >= wanted * (1 - 1e-9)) {
        return step * power;
      }
    }
    return 10 * power;
  }

  /** The largest such step that is at most this. */
  static double atMost(double wanted) {
    double power = Math.pow(10, Math.floor(Math.log10(wanted)));
    double best = power;
    for (double step : STEPS) {
      if (step * power <= wanted * (1 + 1e-9)) {
        best = step * power;
      }
    }
    return best;
  }
}
