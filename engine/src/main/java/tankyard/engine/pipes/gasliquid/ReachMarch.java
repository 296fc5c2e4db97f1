package tankyard.engine.pipes.gasliquid;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import tankyard.engine.fluids.AbsolutePressure;

/**
 * A straight reach marched against the flow. The gas grows as the pressure falls, so the gradient
 * changes on the way: classical Runge-Kutta steps, doubled in number until the answer stays.
 */
final class ReachMarch implements FirstOrderDifferentialEquations {
  static final int PRESSURE = 0;
  static final int LIFT = 1;
  static final int FRICTION = 2;
  static final int LIQUID = 3;
  private static final int STATES = 4;

  private static final int MOST_STEPS = 256;
  private static final double SETTLED = 1e-7;

  /** A trial step may overshoot; the law is never asked for less than this part of the air's. */
  private static final double LEAST_OF_AIR = 0.1;

  private final GasLiquidPipe pipe;
  private final double slope;
  private final double leastPascals;

  ReachMarch(GasLiquidPipe pipe, double slope, AbsolutePressure air) {
    this.pipe = pipe;
    this.slope = slope;
    leastPascals = LEAST_OF_AIR * air.pascals();
  }

  /** The sums at the upstream end of the reach, from those at its downstream end. */
  double[] upTo(double lengthM, double[] downstream) {
    double[] before = steps(1, lengthM, downstream);
    for (int n = 2; n <= MOST_STEPS; n *= 2) {
      double[] now = steps(n, lengthM, downstream);
      if (Math.abs(now[PRESSURE] - before[PRESSURE]) <= SETTLED * now[PRESSURE]) {
        return now;
      }
      before = now;
    }
    return before;
  }

  private double[] steps(int n, double lengthM, double[] downstream) {
    ClassicalRungeKuttaIntegrator stepper = new ClassicalRungeKuttaIntegrator(lengthM / n);
    double[] state = downstream;
    for (int k = 0; k < n; k++) {
      state = stepper.singleStep(this, 0, state, lengthM / n);
    }
    return state;
  }

  Gradient gradient(double pascals) {
    return pipe.at(new AbsolutePressure(Math.max(leastPascals, pascals)), slope);
  }

  @Override
  public int getDimension() {
    return STATES;
  }

  @Override
  public void computeDerivatives(double t, double[] state, double[] perMetre) {
    Gradient here = gradient(state[PRESSURE]);
    perMetre[PRESSURE] = here.totalPaPerM();
    perMetre[LIFT] = here.liftPaPerM();
    perMetre[FRICTION] = here.frictionPaPerM();
    perMetre[LIQUID] = here.holdUp() * pipe.areaM2();
  }
}
