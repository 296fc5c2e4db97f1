package tankyard.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
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
  private static final double CLOSE_PA = 1e-4;

  private final LoopPart loops;
  private final IntFunction<String> runId;
  private final Circuit circuit;
  private final Topology net;
  private final int free;
  private final GradientMatrix matrix;
  private final Laws laws;
  private double[] flow;
  private double[] pressure;
  private double worst;

  /** What came out: by the numbers of the loops. */
  record Balanced(double[] flow, double[] pressure, int rounds) {}

  /**
   * From flows that balance and pressures near them, by the numbers of the loops.
   *
   * @param circuit of the loops
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
    worst = laws.look(flow, pressure);
  }

  Balanced solve() {
    int round = 0;
    while (round < MOST_ROUNDS) {
      round++;
      step();
      if (worst <= CLOSE_PA) {
        break;
      }
    }
    LastDigits last = new LastDigits(circuit, flow, laws.perFlow());
    if (!last.audited().holds()) {
      throw new Unsolved(
          "The loops do not balance: "
              + last.audited().worstEnergyPa()
              + " Pa are left along "
              + named(last.audited().worstRun()));
    }
    return new Balanced(last.flow(), last.pressure(), round);
  }

  private String named(int run) {
    return runId.apply(loops.inWhole(run));
  }

  private void step() {
    double[] right = Arrays.copyOf(circuit.inflow(), free);
    matrix.clear();
    for (int i = 0; i < net.runs(); i++) {
      enter(i, right);
    }
    if (!matrix.solve(right)) {
      throw new Unsolved(
          "The loops have no single answer: what stands beyond the crest or regulator of "
              + String.join(", ", cut())
              + " is not felt before it");
    }
    double[] flow0 = flow;
    double[] pressure0 = pressure;
    double[] pressure1 = pressure0.clone();
    System.arraycopy(right, 0, pressure1, 0, free);
    double[] flow1 = new double[flow0.length];
    for (int i = 0; i < flow1.length; i++) {
      flow1[i] = carried(i, flow0[i], pressure0, pressure1);
    }
    move(flow0, pressure0, flow1, pressure1);
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
  private void enter(int i, double[] right) {
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

  /** The flow of a run that goes with new pressures, by its slopes at the old ones. */
  private double carried(int i, double q, double[] before, double[] after) {
    int up = net.upstream(i, q);
    int down = net.downstream(i, q);
    double c = laws.conductance(i);
    double size =
        Math.abs(q)
            + c
                * (after[up]
                    - laws.upstreamPa(i)
                    - laws.perDownstream(i) * (after[down] - before[down]));
    return q >= 0 ? size : -size;
  }

  /** Takes the whole step, or a half, a quarter ... of it until the worst run gets better. */
  private void move(double[] flow0, double[] pressure0, double[] flow1, double[] pressure1) {
    double before = worst;
    double share = 1;
    for (int halving = 0; halving < MOST_HALVINGS; halving++, share /= 2) {
      flow = between(flow0, flow1, share);
      pressure = between(pressure0, pressure1, share);
      worst = laws.look(flow, pressure);
      if (worst <= before * (1 - 0.1 * share) || before < CLOSE_PA) {
        return;
      }
    }
    // No share of the step helps, as happens where a flow turns round: take it whole.
    flow = flow1;
    pressure = pressure1;
    worst = laws.look(flow, pressure);
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
