package tankyard.engine.network;

import java.util.List;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Newton's method on the loops: the unknowns are the flow of every run and the pressure of every
 * free joint, the equations are energy along every run and mass at every free joint (the global
 * gradient form of Todini and Pilati 1988, from memory). Where a factor costs much more than a step
 * with it, as in large grids, it serves for two more.
 */
final class LoopNewton {
  private static final int MOST_ROUNDS = 60;
  private static final int MOST_HALVINGS = 12;
  private static final double CLOSE_PA = 1e-3;
  private static final int MOST_REPAIRS = 5;

  /** Steps with a factor at hand, after its round's own (docs/decisions/0005). */
  private static final int MOST_AGAIN = 2;

  /** Share of the misfit that such a step may leave. */
  private static final double MOST_LEFT = 1.0 / 3;

  private final LoopPart loops;
  private final IntFunction<String> runId;
  private final Circuit circuit;
  private final Linearized system;
  private final Extrapolation extrapolation = new Extrapolation();
  private final Laws laws;
  private final boolean isFactorDear;
  private double[] flow;
  private double[] pressure;

  /** Room for the next step, so that a step leaves nothing behind to be collected. */
  private double[] nextFlow;

  private double[] nextPressure;
  private double worst;
  private int rounds;
  private int steps;

  /**
   * What came out, by the numbers of the loops.
   *
   * @param rounds each with a factorization of its own
   * @param steps beside those of the rounds, with a factor at hand
   */
  record Balanced(double[] flow, double[] pressure, int rounds, int steps) {}

  /**
   * From flows that balance and pressures near them, by the numbers of the loops.
   *
   * @param circuit of the loops
   * @param startFlow becomes the solver's own
   * @param startPressure becomes the solver's own
   * @param runId a run's id by its number in the whole network, for what is said when it fails
   */
  LoopNewton(
      LoopPart loops,
      Circuit circuit,
      double[] startFlow,
      double[] startPressure,
      IntFunction<String> runId) {
    this.loops = loops;
    this.circuit = circuit;
    this.runId = runId;
    laws = new Laws(circuit);
    system = new Linearized(loops, circuit, laws);
    isFactorDear = loops.pattern().isFactorDear();
    flow = startFlow;
    pressure = startPressure;
    nextFlow = new double[flow.length];
    nextPressure = pressure.clone();
    worst = laws.look(flow, pressure);
  }

  /** Sets out as if every run lost alike, where every run has such a loss. */
  LoopNewton evenly() {
    if (EvenStart.tried(circuit, flow, pressure, laws)) {
      worst = Double.POSITIVE_INFINITY;
    }
    return this;
  }

  /** Goes on until the pressures fit; false where they will not. */
  boolean settles() {
    do {
      rounds++;
      boolean again = round();
      for (int n = 0; again && n < MOST_AGAIN && worst > CLOSE_PA; n++, steps++) {
        again = again();
      }
    } while (worst > CLOSE_PA && rounds < MOST_ROUNDS);
    return worst <= CLOSE_PA;
  }

  double[] flow() {
    return flow;
  }

  double[] pressure() {
    return pressure;
  }

  /** How a run's pressure grows with its flow, Pa/(m3/s). */
  double perFlow(int run) {
    return laws.perFlow(run);
  }

  /** Where it came to, to the last digit. */
  Balanced balanced() {
    LastDigits last = lastDigits();
    for (int again = 0; !last.audited().holds() && again < MOST_REPAIRS; again++) {
      // Once more from flows that balance: rounding in a huge pipe's flow is out of them.
      flow = last.flow();
      pressure = last.pressure();
      worst = laws.look(flow, pressure);
      round();
      last = lastDigits();
    }
    if (!last.audited().holds()) {
      throw new Unsolved(
          "The loops do not balance: "
              + last.audited().worstEnergyPa()
              + " Pa are left along "
              + named(last.audited().worstRun()));
    }
    return new Balanced(last.flow(), last.pressure(), rounds, steps);
  }

  private LastDigits lastDigits() {
    return new LastDigits(circuit, flow, pressure, laws);
  }

  private String named(int run) {
    return runId.apply(loops.inWhole(run));
  }

  /**
   * A step with the slopes of where it starts.
   *
   * @return whether a step with the same slopes is likely to be worth it
   */
  private boolean round() {
    if (!system.takeSlopes(flow)) {
      throw new Unsolved(
          "The loops have no single answer: what stands beyond the crest or regulator of "
              + String.join(", ", cut())
              + " is not felt before it");
    }
    system.step(flow, pressure, nextFlow, nextPressure);
    extrapolation.forget();
    double before = worst;
    move();
    // The slopes of an even start are not the laws' own. Else a round squares the misfit, and one
    // with slopes a step old leaves about twice the share that it did.
    boolean isOwn = before < Double.POSITIVE_INFINITY;
    return isFactorDear && system.isSymmetric() && isOwn && 2 * worst <= MOST_LEFT * before;
  }

  /**
   * A step with the slopes and the factor of the last round.
   *
   * @return whether one more is worth it
   */
  private boolean again() {
    system.step(flow, pressure, nextFlow, nextPressure);
    extrapolation.mix(system::conductance, flow, nextFlow, nextPressure);
    double before = worst;
    worst = laws.look(nextFlow, nextPressure);
    if (worst >= before) {
      worst = laws.look(flow, pressure);
      return false;
    }
    take(nextFlow, nextPressure);
    return worst <= MOST_LEFT * before;
  }

  /** Runs whose far end is not felt. */
  private List<String> cut() {
    return named(i -> laws.perDownstream(i) == 0);
  }

  /** Runs that resist so much, or whose far end is not felt; all of them where there are none. */
  List<String> held(double resistance) {
    List<String> held = named(i -> laws.perDownstream(i) == 0 || laws.perFlow(i) >= resistance);
    return held.isEmpty() ? named(i -> true) : held;
  }

  private List<String> named(IntPredicate which) {
    return IntStream.range(0, flow.length).filter(which).mapToObj(this::named).toList();
  }

  /** Takes the whole step, or a half, a quarter ... of it until the worst run gets better. */
  private void move() {
    double before = worst;
    double share = 1;
    for (int halving = 0; halving < MOST_HALVINGS; halving++, share /= 2) {
      double[] triedFlow = between(flow, nextFlow, share);
      double[] triedPressure = between(pressure, nextPressure, share);
      worst = laws.look(triedFlow, triedPressure);
      if (worst <= before * (1 - 0.1 * share) || before < CLOSE_PA) {
        take(triedFlow, triedPressure);
        return;
      }
    }
    // No share of the step helps, as happens where a flow turns round: take it whole.
    worst = laws.look(nextFlow, nextPressure);
    take(nextFlow, nextPressure);
  }

  private void take(double[] newFlow, double[] newPressure) {
    nextFlow = flow;
    nextPressure = pressure;
    flow = newFlow;
    pressure = newPressure;
  }

  private static double[] between(double[] a, double[] b, double share) {
    if (share == 1) {
      return b;
    }
    double[] mixed = new double[a.length];
    for (int i = 0; i < a.length; i++) {
      mixed[i] = a[i] + share * (b[i] - a[i]);
    }
    return mixed;
  }
}
