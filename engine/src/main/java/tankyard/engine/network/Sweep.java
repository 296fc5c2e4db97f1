package tankyard.engine.network;

/** Pressures outwards along a tree, from what is held or known already. */
final class Sweep {
  private Sweep() {}

  /** Pressures of all joints the ways lead to, from the held ones. */
  static double[] pressures(Circuit circuit, double[] flow, Ways ways) {
    double[] pressure = new double[circuit.topology().joints()];
    over(circuit, flow, ways, pressure);
    return pressure;
  }

  /** Writes pressures of the outer joints; the inner ones are among them or known. */
  static void over(Circuit circuit, double[] flow, Ways ways, double[] pressure) {
    for (int k = 0; k < ways.outer().length; k++) {
      int outer = ways.outer()[k];
      int run = ways.run()[k];
      pressure[outer] =
          run == SpanningTree.NONE
              ? circuit.heldPa()[outer]
              : outer(circuit.link()[run], flow[run], ways.leadsIn()[k], pressure[ways.inner()[k]]);
    }
  }

  /** The pressure at the outer end of a run whose flow counts as it was drawn. */
  private static double outer(Link link, double flow, boolean leadsIn, double inner) {
    return flow >= 0 == leadsIn
        ? link.upstream(flow, inner).pressurePa()
        : DownstreamPressure.of(link, flow, inner);
  }
}
