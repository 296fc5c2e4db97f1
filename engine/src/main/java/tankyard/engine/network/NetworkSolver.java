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
    Circuit circuit = network.circuit();
    double[] pressure = Sweep.pressures(circuit, flow, tree.ways());
    return audited(network.layout(), circuit, flow, pressure, 0, 0);
  }

  private static Solved looped(Network network, SpanningTree tree, double[] flow) {
    LoopPart loops = network.layout().loops();
    Circuit circuit = loops.blocked(network.circuit());
    double[] pressure = new double[circuit.inflow().length];
    Sweep.over(circuit, flow, loops.ways(), pressure);
    LoopNewton.Balanced balanced =
        new LoopsOverHills(
                loops, loops.circuit(circuit, flow), i -> network.layout().runs().get(i).run())
            .solve(loops.flowsOf(flow), loops.pressuresOf(pressure));
    loops.putFlows(balanced.flow(), flow);
    loops.putPressures(balanced.pressure(), pressure);
    Sweep.over(circuit, flow, loops.branches(), pressure);
    return audited(network.layout(), circuit, flow, pressure, balanced.rounds(), balanced.steps());
  }

  private static Solved audited(
      Layout layout, Circuit circuit, double[] flow, double[] pressure, int rounds, int steps) {
    Audited audited = Audited.of(circuit, flow, pressure);
    String worst = flow.length == 0 ? "" : layout.runs().get(audited.worstRun()).run();
    if (!audited.holds()) {
      throw new Unsolved(
          "The runs do not balance: " + audited.worstEnergyPa() + " Pa are left along " + worst);
    }
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
