package tankyard.engine.network;

/**
 * Flows to set out from as if every run lost what the mean run does, with the slope of a straight
 * line to each instead of the law's own. The first round then solves a network of straight laws,
 * whose flows part about as the true ones do. From the flows of a tree, the runs beside it would
 * carry nothing and seem to have no resistance; the rounds after the first spend themselves on
 * taking back what that sends through them.
 *
 * <p>Only where every run falls with its flow and feels its far end: a crest, valve or pump has no
 * such line.
 */
final class EvenStart {
  /** Share of a flow that is as good as none, and tells which way it runs. */
  private static final double STILL = 1e-9;

  private final Circuit circuit;
  private final double[] flow;
  private final double[] pressure;

  /** Pressure at the upstream end of each run with next to no flow. */
  private final double[] stillPa;

  private EvenStart(Circuit circuit, double[] treeFlow, double[] pressure) {
    this.circuit = circuit;
    this.pressure = pressure;
    flow = treeFlow.clone();
    stillPa = new double[flow.length];
  }

  /**
   * Tries it.
   *
   * @param treeFlow as a tree alone would carry it; takes the flows to set out from
   * @param laws look at those flows, and take the straight slopes
   * @return false where the tree's flows are left as they are
   */
  static boolean tried(Circuit circuit, double[] treeFlow, double[] pressure, Laws laws) {
    EvenStart start = new EvenStart(circuit, treeFlow, pressure);
    if (!start.evened()) {
      return false;
    }
    laws.look(start.flow, pressure);
    for (int i = 0; i < treeFlow.length; i++) {
      double loss = laws.upstreamPa(i) - start.stillPa[i];
      if (!(loss > 0) || laws.perDownstream(i) != 1) {
        return false;
      }
      laws.bend(i, loss / Math.abs(start.flow[i]));
    }
    System.arraycopy(start.flow, 0, treeFlow, 0, treeFlow.length);
    return true;
  }

  private boolean evened() {
    Topology net = circuit.topology();
    double flows = 0;
    double losses = 0;
    int carry = 0;
    for (int i = 0; i < flow.length; i++) {
      if (flow[i] != 0) {
        flows += Math.abs(flow[i]);
        losses += Math.abs(pressure[net.from(i)] - pressure[net.to(i)]);
        carry++;
      }
    }
    boolean sensible = flows > 0 && losses > 0;
    for (int i = 0; i < flow.length && sensible; i++) {
      sensible = even(i, flows / carry, losses / carry);
    }
    return sensible;
  }

  /** As if it lost by the square of its flow, which is near enough to set out from. */
  private boolean even(int i, double meanFlow, double meanLoss) {
    double mean = flow[i] < 0 ? -meanFlow : meanFlow;
    double below = pressure[circuit.topology().downstream(i, mean)];
    Link link = circuit.link()[i];
    stillPa[i] = link.upstream(STILL * mean, below).pressurePa();
    double loss = link.upstream(mean, below).pressurePa() - stillPa[i];
    flow[i] = mean * Math.sqrt(meanLoss / loss);
    return loss > 0 && Double.isFinite(loss);
  }
}
