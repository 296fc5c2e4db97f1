package tankyard.engine.pipes.gasliquid;

import tankyard.engine.fluids.AbsolutePressure;

/**
 * A straight reach marched against the flow. The gas grows as the pressure falls, so the reach is
 * cut into steps over which the pressure changes by half a per cent at most; each takes the
 * gradient at the pressure of its middle, which half a step with the gradient at its lower end
 * leads to.
 */
final class ReachMarch {
  /** Of the absolute pressure, over one step. */
  static final double MOST_CHANGE = 0.005;

  private static final int MOST_STEPS = 2000;

  /**
   * A trial half step may overshoot; the law is never asked for less than this part of the air's.
   */
  private static final double LEAST_OF_AIR = 0.1;

  private final GasLiquidPipe pipe;
  private final int run;
  private final double slope;

  ReachMarch(GasLiquidPipe pipe, int run, double slope) {
    this.pipe = pipe;
    this.run = run;
    this.slope = slope;
  }

  /**
   * Walks up the reach.
   *
   * @param first the gradient at its downstream end
   * @param upstreamM distance of its upstream end from the line's start
   */
  void walk(double lengthM, double upstreamM, Gradient first, Tally tally) {
    double change = Math.abs(first.totalPaPerM()) * lengthM / tally.pressurePa;
    int n = (int) Math.min(MOST_STEPS, Math.max(1, Math.ceil(change / MOST_CHANGE)));
    double length = lengthM / n;
    Gradient lower = first;
    for (int k = 1; k <= n; k++) {
      AbsolutePressure mean =
          bounded(tally.pressurePa + lower.totalPaPerM() * length / 2, tally.airPa);
      Gradient middle = pipe.at(mean, slope);
      double at = upstreamM + (n - k) * length;
      tally.add(
          new GasLiquidStep(run, at, length, slope, mean, middle, middle.totalPaPerM() * length),
          pipe.areaM2());
      if (k < n) {
        lower = gradient(tally);
      }
    }
  }

  Gradient gradient(Tally tally) {
    return pipe.at(bounded(tally.pressurePa, tally.airPa), slope);
  }

  private static AbsolutePressure bounded(double pascals, double airPa) {
    return new AbsolutePressure(Math.max(LEAST_OF_AIR * airPa, pascals));
  }
}
