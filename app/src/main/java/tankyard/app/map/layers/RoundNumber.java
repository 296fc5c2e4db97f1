package tankyard.app.map.layers;

/** 1, 2 or 5 times a power of ten. */
final class RoundNumber {
  private RoundNumber() {}

  static double atLeast(double value) {
    double power = Math.pow(10, Math.floor(Math.log10(value)));
    for (double step : new double[] {1, 2, 5}) {
      if (step * power >= value * 0.999) {
        return step * power;
      }
    }
    return 10 * power;
  }

  static double atMost(double value) {
    double power = Math.pow(10, Math.floor(Math.log10(value)));
    for (double step : new double[] {5, 2}) {
      if (step * power <= value * 1.001) {
        return step * power;
      }
    }
    return power;
  }
}
