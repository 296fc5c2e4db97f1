package tankyard.engine.network;

/** Pressures outwards along a tree, from what is held or known already. */
final class Sweep {
  /** m3/s that is as good as none, and tells which way it runs. */
  static final double STILL = 1e-18;

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

  /**
   * The pressure at the outer end of a run whose flow counts as it was drawn. Where nothing flows,
   * what stands farther out is taken to fill the run up to its crest.
   */
  private static double outer(Link link, double flow, boolean leadsIn, double inner) {
    double inwards = flow == 0 && !leadsIn ? -STILL : flow;
    return inwards >= 0 == leadsIn
        ? link.upstream(inwards, inner).pressurePa()
        : DownstreamPressure.of(link, flow, inner);
  }
}
