package tankyard.engine.network;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/**
 * Newton's method on the loops: the unknowns are the flow of every run and the pressure of every
 * free joint, the equations are energy along every run and mass at every free joint. The flows are
 * taken out by hand, which leaves one sparse system in the pressures (the global gradient form of
 * Todini and Pilati 1988, from memory).
 */
final class LoopNewton {
  private static final int MOST_ROUNDS = 200;
  private static final int MOST_HALVINGS = 12;
  private static final double CLOSE_PA = 1e-3;

  private final LoopPart loops;
  private final IntFunction<String> runId;
  private final Circuit circuit;
  private final Topology net;
  private final int free;
  private final GradientMatrix matrix;
  private final Laws laws;
  private final double[] right;
  private double[] flow;
  private double[] pressure;

  /** Room for the next step, so that a step leaves nothing behind to be collected. */
  private double[] nextFlow;

  private double[] nextPressure;
  private double worst;

  /**
   * What came out, by the numbers of the loops.
   *
   * @param rounds each with a factorization of its own
   */
  record Balanced(double[] flow, double[] pressure, int rounds) {}

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
    net = circuit.topology();
    free = loops.free();
    matrix = new GradientMatrix(loops.pattern());
    laws = new Laws(circuit);
    flow = startFlow;
    pressure = startPressure;
    nextFlow = new double[flow.length];
    nextPressure = pressure.clone();
    right = new double[free];
    worst =
        EvenStart.tried(circuit, flow, pressure, laws)
            ? Double.POSITIVE_INFINITY
            : laws.look(flow, pressure);
  }

  Balanced solve() {
    int rounds = 0;
    do {
      rounds++;
      round();
    } while (worst > CLOSE_PA && rounds < MOST_ROUNDS);
    LastDigits last = new LastDigits(circuit, flow, laws.perFlow());
    if (!last.audited().holds()) {
      throw new Unsolved(
          "The loops do not balance: "
              + last.audited().worstEnergyPa()
              + " Pa are left along "
              + named(last.audited().worstRun()));
    }
    return new Balanced(last.flow(), last.pressure(), rounds);
  }

  private String named(int run) {
    return runId.apply(loops.inWhole(run));
  }

  /** A step with the slopes of where it starts. */
  private void round() {
    System.arraycopy(circuit.inflow(), 0, right, 0, free);
    matrix.clear();
    for (int i = 0; i < net.runs(); i++) {
      enter(i);
    }
    if (!matrix.solve(right)) {
      throw new Unsolved(
          "The loops have no single answer: what stands beyond the crest or regulator of "
              + String.join(", ", cut())
              + " is not felt before it");
    }
    System.arraycopy(right, 0, nextPressure, 0, free);
    for (int i = 0; i < flow.length; i++) {
      nextFlow[i] = carried(i);
    }
    move();
  }

  /** Runs whose far end is not felt. */
  private List<String> cut() {
    List<String> cut = new ArrayList<>();
    for (int i = 0; i < net.runs(); i++) {
      if (laws.perDownstream(i) == 0) {
        cut.add(named(i));
      }
    }
    return cut;
  }

  /** One run's part in the mass of its two joints, for new pressures at both. */
  private void enter(int i) {
    int up = net.upstream(i, flow[i]);
    int down = net.downstream(i, flow[i]);
    double share = laws.perDownstream(i);
    double c = laws.conductance(i);
    double constant = Math.abs(flow[i]) - c * (laws.upstreamPa(i) - share * pressure[down]);
    boolean upIsFrom = up == net.from(i);
    if (share != 1) {
      matrix.breakSymmetry();
    }
    if (up < free) {
      matrix.addDiagonal(up, c);
      right[up] -= constant;
      if (down < free) {
        matrix.addAcross(i, upIsFrom, -c * share);
      } else {
        right[up] += c * share * pressure[down];
      }
    }
    if (down < free) {
      matrix.addDiagonal(down, c * share);
      right[down] += constant;
      if (up < free) {
        matrix.addAcross(i, !upIsFrom, -c);
      } else {
        right[down] += c * pressure[up];
      }
    }
  }

  /** The flow of a run that goes with the new pressures, by its slopes at the old ones. */
  private double carried(int i) {
    double q = flow[i];
    int up = net.upstream(i, q);
    int down = net.downstream(i, q);
    double felt = laws.perDownstream(i) * (nextPressure[down] - pressure[down]);
    double size =
        Math.abs(q) + laws.conductance(i) * (nextPressure[up] - laws.upstreamPa(i) - felt);
    return q >= 0 ? size : -size;
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
