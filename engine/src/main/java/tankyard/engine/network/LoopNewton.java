package tankyard.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Newton's method on the whole network: the unknowns are the flow of every run and the pressure of
 * every free joint, the equations are energy along every run and mass at every free joint. The
 * flows are taken out by hand, which leaves one sparse system in the pressures (the global gradient
 * form of Todini and Pilati 1988, from memory).
 */
final class LoopNewton {
  private static final int MOST_ROUNDS = 200;
  private static final int MOST_HALVINGS = 12;
  private static final int MOST_PASSES = 60;
  private static final double CLOSE_PA = 1e-4;

  /** A run that loses nothing would leave its flow undetermined, Pa/(m3/s). */
  private static final double LEAST_SLOPE = 1e-3;

  private final Network network;
  private final Indexed net;
  private final GradientMatrix matrix;
  private final Link.Upstream[] law;
  private double[] flow;
  private double[] pressure;
  private double worst;

  /** From flows that balance and pressures near them, by the numbers of the network's layout. */
  LoopNewton(Network network, double[] startFlow, double[] startPressure) {
    this.network = network;
    net = new Indexed(network);
    matrix = new GradientMatrix(net);
    law = new Link.Upstream[net.link.length];
    flow = startFlow;
    pressure = net.inOrder(startPressure);
    worst = look();
  }

  Solved solve() {
    int round = 0;
    while (round < MOST_ROUNDS) {
      round++;
      step();
      if (worst <= CLOSE_PA) {
        break;
      }
    }
    SpanningTree smooth = smoothest();
    double[] flows = network.balanced(flow, smooth);
    double[] pressures = NetworkSolver.sweep(network, flows, smooth);
    Solved.Audit audit = Auditor.audit(network, flows, pressures, round);
    double share = 0.5;
    for (int pass = 0; pass < MOST_PASSES && !audit.holds(); pass++) {
      double[] nextFlows = network.balanced(eased(flows, pressures, smooth, share), smooth);
      double[] nextPressures = NetworkSolver.sweep(network, nextFlows, smooth);
      Solved.Audit next = Auditor.audit(network, nextFlows, nextPressures, round);
      if (next.worstEnergyPa() < audit.worstEnergyPa()) {
        flows = nextFlows;
        pressures = nextPressures;
        audit = next;
      } else {
        share /= 2;
      }
    }
    if (!audit.holds()) {
      throw new Unsolved(
          "The loops do not balance: "
              + audit.worstEnergyPa()
              + " Pa are left along "
              + audit.worstRun());
    }
    return new Solved(network.layout(), flows, pressures, audit);
  }

  /**
   * A tree of the runs that rub least. What rounding left over at the joints is put on these, where
   * it costs next to no pressure (beside a huge pipe a tiny one would feel it), and the pressures
   * are taken anew along them.
   */
  private SpanningTree smoothest() {
    double[] slope = new double[law.length];
    for (int i = 0; i < slope.length; i++) {
      slope[i] = law[i].perFlow();
    }
    return new SpanningTree(network.layout(), slope);
  }

  /**
   * What misfit is left stands along the runs beside the tree: a share of it is taken out of each,
   * as loops are corrected by hand.
   */
  private double[] eased(double[] flows, double[] pressures, SpanningTree tree, double share) {
    Layout layout = network.layout();
    double[] eased = flows.clone();
    for (int i = 0; i < eased.length; i++) {
      if (!tree.has(i)) {
        double q = flows[i];
        Link.Upstream at = net.link[i].upstream(q, pressures[layout.downstream(i, q)]);
        double misfit = at.pressurePa() - pressures[layout.upstream(i, q)];
        double change = share * misfit / Math.max(at.perFlow(), LEAST_SLOPE);
        eased[i] = q >= 0 ? q - change : q + change;
      }
    }
    return eased;
  }

  private void step() {
    double[] right = Arrays.copyOf(net.inflow, net.free);
    matrix.clear();
    for (int i = 0; i < law.length; i++) {
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
    System.arraycopy(right, 0, pressure1, 0, net.free);
    double[] flow1 = new double[flow0.length];
    for (int i = 0; i < flow1.length; i++) {
      flow1[i] = carried(i, flow0[i], pressure0, pressure1);
    }
    move(flow0, pressure0, flow1, pressure1);
  }

  /** Runs whose far end is not felt. */
  private List<String> cut() {
    List<String> cut = new ArrayList<>();
    for (int i = 0; i < law.length; i++) {
      if (law[i].perDownstream() == 0) {
        cut.add(network.layout().runs().get(i).run());
      }
    }
    return cut;
  }

  /** One run's part in the mass of its two joints, for new pressures at both. */
  private void enter(int i, double[] right) {
    int up = net.upstream(i, flow[i]);
    int down = net.downstream(i, flow[i]);
    double share = law[i].perDownstream();
    double c = 1 / Math.max(law[i].perFlow(), LEAST_SLOPE);
    double constant = Math.abs(flow[i]) - c * (law[i].pressurePa() - share * pressure[down]);
    boolean upIsFrom = up == net.from[i];
    if (share != 1) {
      matrix.breakSymmetry();
    }
    if (up < net.free) {
      matrix.addDiagonal(up, c);
      right[up] -= constant;
      if (down < net.free) {
        matrix.addAcross(i, upIsFrom, -c * share);
      } else {
        right[up] += c * share * pressure[down];
      }
    }
    if (down < net.free) {
      matrix.addDiagonal(down, c * share);
      right[down] += constant;
      if (up < net.free) {
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
    double c = 1 / Math.max(law[i].perFlow(), LEAST_SLOPE);
    double size =
        Math.abs(q)
            + c
                * (after[up]
                    - law[i].pressurePa()
                    - law[i].perDownstream() * (after[down] - before[down]));
    return q >= 0 ? size : -size;
  }

  /** Takes the whole step, or a half, a quarter ... of it until the worst run gets better. */
  private void move(double[] flow0, double[] pressure0, double[] flow1, double[] pressure1) {
    double before = worst;
    double share = 1;
    for (int halving = 0; halving < MOST_HALVINGS; halving++, share /= 2) {
      flow = between(flow0, flow1, share);
      pressure = between(pressure0, pressure1, share);
      worst = look();
      if (worst <= before * (1 - 0.1 * share) || before < CLOSE_PA) {
        return;
      }
    }
    // No share of the step helps, as happens where a flow turns round: take it whole.
    flow = flow1;
    pressure = pressure1;
    worst = look();
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

  /** Works every law out at the present flows and pressures; the worst misfit, Pa. */
  private double look() {
    double most = 0;
    for (int i = 0; i < law.length; i++) {
      law[i] = net.link[i].upstream(flow[i], pressure[net.downstream(i, flow[i])]);
      most = Math.max(most, Math.abs(law[i].pressurePa() - pressure[net.upstream(i, flow[i])]));
    }
    return most;
  }
}
