package tankyard.engine.network;

import java.util.function.IntToDoubleFunction;

/**
 * Two steps with the same slopes miss in the same way, each by some share of the one before. From
 * the last two it is seen which mix of where they led would have needed no step at all (Anderson
 * 1965, with a memory of one; from memory). Any such mix balances mass where both do.
 */
final class Extrapolation {
  /** Room that is made when it is first needed: few networks do. */
  private double[] step;

  private double[] flow;
  private double[] pressure;

  /** False until there is a step to compare with. */
  private boolean begun;

  /** Forgets: the slopes are new. */
  void forget() {
    begun = false;
  }

  /**
   * Moves where a step leads.
   *
   * @param conductance of a run, so that flows are weighed by the pressure they cost
   * @param from flows before the step
   * @param toFlow flows that it leads to
   * @param toPressure pressures that it leads to
   */
  void mix(IntToDoubleFunction conductance, double[] from, double[] toFlow, double[] toPressure) {
    if (step == null) {
      step = new double[toFlow.length];
      flow = new double[toFlow.length];
      pressure = new double[toPressure.length];
    }
    double share = begun ? share(conductance, from, toFlow) : 0;
    for (int i = 0; i < step.length; i++) {
      step[i] = toFlow[i] - from[i];
    }
    blend(toFlow, flow, share);
    blend(toPressure, pressure, share);
    begun = true;
  }

  /** How much of the last step's end would have made this step none, in pressure lost. */
  private double share(IntToDoubleFunction conductance, double[] from, double[] to) {
    double along = 0;
    double size = 0;
    for (int i = 0; i < step.length; i++) {
      double now = to[i] - from[i];
      double change = now - step[i];
      double perFlow = change / conductance.applyAsDouble(i);
      along += perFlow * now;
      size += perFlow * change;
    }
    return size > 0 ? along / size : 0;
  }

  /** Takes some of the last end into this one, and keeps this one as it was. */
  private static void blend(double[] now, double[] last, double share) {
    for (int i = 0; i < now.length; i++) {
      double kept = now[i];
      now[i] = kept - share * (kept - last[i]);
      last[i] = kept;
    }
  }
}
