package tankyard.engine.network;

import java.util.HashMap;
import java.util.Map;

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
    if (!network.cutOff().isEmpty()) {
      throw new Unsolved("No way to a held pressure from: " + String.join(", ", network.cutOff()));
    }
    SpanningFlows tree = new SpanningFlows(network);
    Map<String, Double> pressure = sweep(network, tree);
    if (tree.isAll()) {
      return new Solved(tree.flow(), pressure, Auditor.audit(network, tree.flow(), pressure, 0));
    }
    return new LoopNewton(network, tree, pressure).solve();
  }

  /** Pressures from the held joints outwards along the tree. */
  private static Map<String, Double> sweep(Network network, SpanningFlows tree) {
    Map<String, Double> pressure = new HashMap<>();
    for (String here : tree.outwards()) {
      Joint joint = network.joint(here);
      if (joint.isHeld()) {
        pressure.put(here, joint.heldPa().getAsDouble());
        continue;
      }
      Run run = tree.towardsHeld(here);
      double flow = tree.flow().get(run.id());
      double inner = pressure.get(run.otherEnd(here));
      boolean outerIsUpstream = run.upstream(flow).equals(here);
      pressure.put(
          here,
          outerIsUpstream
              ? run.link().upstream(flow, inner).pressurePa()
              : DownstreamPressure.of(run.link(), flow, inner));
    }
    return pressure;
  }
}
