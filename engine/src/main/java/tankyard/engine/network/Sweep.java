package tankyard.engine.network;

/** Pressures outwards along a tree, from what is held or known already. */
final class Sweep {
  private Sweep() {}

  /** Pressures of all joints a tree reaches, from the held ones. */
  static double[] pressures(Circuit circuit, double[] flow, SpanningTree tree) {
    Topology topology = circuit.topology();
    double[] pressure = new double[topology.joints()];
    for (int here : tree.outwards()) {
      pressure[here] =
          topology.isHeld(here)
              ? circuit.heldPa()[here]
              : outer(circuit, flow, tree.towardsHeld(here), here, pressure);
    }
    return pressure;
  }

  /** Pressures of the branches that dangle from loops, from those of the loops. */
  static void branches(
      Circuit circuit, double[] flow, SpanningTree tree, LoopPart loops, double[] pressure) {
    for (int here : tree.outwards()) {
      if (!loops.has(here)) {
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
