package tankyard.engine.network;

/**
 * The loops with every run's law as a straight line: Newton's system. The flows are taken out by
 * hand, which leaves one sparse system in the pressures of the free joints. The lines' slopes are
 * held with their factor until they are taken anew; where the lines start follows the flows.
 */
final class Linearized {
  private final Circuit circuit;
  private final Topology net;
  private final Laws laws;
  private final int free;
  private final GradientMatrix matrix;

  /** m3/s for a pascal, of every run. */
  private final double[] conductance;

  /** What of a change downstream is felt upstream, of every run. */
  private final double[] felt;

  private final double[] right;

  Linearized(LoopPart loops, Circuit circuit, Laws laws) {
    this.circuit = circuit;
    this.laws = laws;
    net = circuit.topology();
    free = loops.free();
    matrix = new GradientMatrix(loops.pattern());
    conductance = new double[net.runs()];
    felt = new double[net.runs()];
    right = new double[free];
  }

  /**
   * Takes the slopes of the laws as they were last looked at, and makes a factor.
   *
   * @return false where the system has no single answer
   */
  boolean takeSlopes(double[] flow) {
    matrix.clear();
    for (int i = 0; i < conductance.length; i++) {
      conductance[i] = laws.conductance(i);
      felt[i] = laws.perDownstream(i);
      enter(i, net.upstream(i, flow[i]), net.downstream(i, flow[i]));
    }
    return matrix.factor();
  }

  /** One run's part in how the mass of its two joints goes with their pressures. */
  private void enter(int run, int up, int down) {
    double c = conductance[run];
    double share = felt[run];
    if (share != 1) {
      matrix.breakSymmetry();
    }
    if (up < free) {
      matrix.addDiagonal(up, c);
      if (down < free) {
        boolean upIsFrom = up == net.from(run);
        matrix.addAcross(run, upIsFrom, -c * share);
        matrix.addAcross(run, !upIsFrom, -c);
      }
    }
    if (down < free) {
      matrix.addDiagonal(down, c * share);
    }
  }

  /** Whether no crest cuts a run, so that the slopes do for another step. */
  boolean isSymmetric() {
    return matrix.isSymmetric();
  }

  /** m3/s for a pascal along a run. */
  double conductance(int run) {
    return conductance[run];
  }

  /**
   * The pressures that balance mass along the straight lines, and the flows that go with them.
   *
   * @param flow and pressure, where the laws were last looked at
   * @param nextFlow takes the flows
   * @param nextPressure takes the free joints' pressures
   */
  void step(double[] flow, double[] pressure, double[] nextFlow, double[] nextPressure) {
    System.arraycopy(circuit.inflow(), 0, right, 0, free);
    for (int i = 0; i < flow.length; i++) {
      ask(i, flow[i], pressure);
    }
    matrix.solve(right);
    System.arraycopy(right, 0, nextPressure, 0, free);
    for (int i = 0; i < flow.length; i++) {
      nextFlow[i] = carried(i, flow[i], pressure, nextPressure);
    }
  }

  /** What one run asks of the new pressures at its joints. */
  private void ask(int run, double flow, double[] pressure) {
    int up = net.upstream(run, flow);
    int down = net.downstream(run, flow);
    double c = conductance[run];
    double share = felt[run];
    double constant = Math.abs(flow) - c * (laws.upstreamPa(run) - share * pressure[down]);
    if (up < free) {
      right[up] -= down < free ? constant : constant - c * share * pressure[down];
    }
    if (down < free) {
      right[down] += up < free ? constant : constant + c * pressure[up];
    }
  }

  /** The flow of a run that goes with the new pressures. */
  private double carried(int run, double flow, double[] pressure, double[] nextPressure) {
    int up = net.upstream(run, flow);
    int down = net.downstream(run, flow);
    double fromBelow = felt[run] * (nextPressure[down] - pressure[down]);
    double more = conductance[run] * (nextPressure[up] - laws.upstreamPa(run) - fromBelow);
    double size = Math.abs(flow) + more;
    return flow >= 0 ? size : -size;
  }
}
