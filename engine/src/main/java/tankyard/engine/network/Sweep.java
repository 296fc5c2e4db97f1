package tankyard.engine.network;

import java.util.function.IntPredicate;

/** Pressures outwards along a tree, from what is held or known already. */
final class Sweep {
  private Sweep() {}

  /** Pressures of all joints a tree reaches, from the held ones. */
  static double[] pressures(Circuit circuit, double[] flow, SpanningTree tree) {
    double[] pressure = new double[circuit.topology().joints()];
    over(circuit, flow, tree, j -> true, pressure);
    return pressure;
  }

  /**
   * Writes pressures of the joints asked for; those on their way to them are known or among them.
   */
  static void over(
      Circuit circuit, double[] flow, SpanningTree tree, IntPredicate asked, double[] pressure) {
    for (int here : tree.outwards()) {
      if (asked.test(here)) {
        pressure[here] =
            circuit.topology().isHeld(here)
                ? circuit.heldPa()[here]
                : outer(circuit, flow, tree.towardsHeld(here), here, pressure);
      }
    }
  }

  private static double outer(
      Circuit circuit, double[] flow, int run, int outer, double[] pressure) {
    Topology topology = circuit.topology();
    double inner = pressure[topology.otherEnd(run, outer)];
    Link link = circuit.link()[run];
    return topology.upstream(run, flow[run]) == outer
        ? link.upstream(flow[run], inner).pressurePa()
        : DownstreamPressure.of(link, flow[run], inner);
  }
}
