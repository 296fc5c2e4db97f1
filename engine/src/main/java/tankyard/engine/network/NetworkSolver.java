package tankyard.engine.network;

/**
 * Flows and pressures in steady state: what comes in at every joint goes out, and along every run
 * the pressures fit its law.
 *
 * <p>A tree is swept: its flows follow from the joints alone, and its pressures from the held joint
 * outwards. Loops, parallel runs and several held joints are solved together by {@link LoopNewton};
 * the branches that dangle from them are swept. Joints with no way to a held one must be taken out
 * first ({@link Network#reachable()}).
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
    Circuit circuit = network.circuit();
    SpanningTree tree = network.layout().tree();
    double[] flow = tree.balanced(circuit.inflow(), new double[circuit.link().length]);
    return network.layout().isTree() ? swept(network, tree, flow) : looped(network, tree, flow);
  }

  private static Solved swept(Network network, SpanningTree tree, double[] flow) {
    double[] pressure = Sweep.pressures(network.circuit(), flow, tree.ways());
    return audited(network, flow, pressure, 0, 0);
  }

  private static Solved looped(Network network, SpanningTree tree, double[] flow) {
    Circuit circuit = network.circuit();
    LoopPart loops = network.layout().loops();
    double[] pressure = new double[circuit.inflow().length];
    Sweep.over(circuit, flow, loops.ways(), pressure);
    LoopNewton.Balanced balanced =
        new LoopNewton(
                loops,
                loops.circuit(circuit, flow),
                loops.flowsOf(flow),
                loops.pressuresOf(pressure),
                i -> network.layout().runs().get(i).run())
            .solve();
    loops.putFlows(balanced.flow(), flow);
    loops.putPressures(balanced.pressure(), pressure);
    Sweep.over(circuit, flow, loops.branches(), pressure);
    return audited(network, flow, pressure, balanced.rounds(), balanced.steps());
  }

  private static Solved audited(
      Network network, double[] flow, double[] pressure, int rounds, int steps) {
    Layout layout = network.layout();
    Audited audited = Audited.of(network.circuit(), flow, pressure);
    String worst = flow.length == 0 ? "" : layout.runs().get(audited.worstRun()).run();
    return new Solved(
        layout,
        flow,
        pressure,
        new Solved.Audit(
            audited.worstMass(),
            audited.throughput(),
            audited.worstEnergyPa(),
            worst,
            rounds,
            steps));
  }
}
