package tankyard.engine.network;

/**
 * Flows and pressures in steady state: what comes in at every joint goes out, and along every run
 * the pressures fit its law.
 *
 * <p>A tree is swept: its flows follow from the joints alone, and its pressures from the held joint
 * outwards. Loops, parallel runs and several held joints are solved together by {@link LoopNewton}.
 * Joints with no way to a held one must be taken out first ({@link Network#reachable()}).
 */
public final class NetworkSolver {
  private NetworkSolver() {}

  public static Solved solve(Network network) {
    network
        .whyUnsolvable()
        .ifPresent(
            why -> {
              throw new Unsolved(why);
            });
    double[] flow =
        network.balanced(new double[network.layout().runs().size()], network.layout().tree());
    double[] pressure = sweep(network, flow, network.layout().tree());
    return network.layout().isTree()
        ? new Solved(network.layout(), flow, pressure, Auditor.audit(network, flow, pressure, 0))
        : new LoopNewton(network, flow, pressure).solve();
  }

  /** Pressures from the held joints outwards along the tree. */
  static double[] sweep(Network network, double[] flow, SpanningTree tree) {
    Layout layout = network.layout();
    double[] pressure = new double[layout.joints().size()];
    for (int here : tree.outwards()) {
      if (layout.isHeld(here)) {
        pressure[here] = network.heldPa(here);
        continue;
      }
      int run = tree.towardsHeld(here);
      double inner = pressure[layout.otherEnd(run, here)];
      pressure[here] =
          layout.upstream(run, flow[run]) == here
              ? network.link(run).upstream(flow[run], inner).pressurePa()
              : DownstreamPressure.of(network.link(run), flow[run], inner);
    }
    return pressure;
  }
}
