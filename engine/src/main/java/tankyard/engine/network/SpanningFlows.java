package tankyard.engine.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A tree through the network, grown from the held joints, and the flows that satisfy every joint
 * when only the tree's runs carry. For a network that is a tree these are the flows.
 */
final class SpanningFlows {
  private final Network network;
  private final List<String> outwards = new ArrayList<>();
  private final Map<String, Run> towardsHeld = new HashMap<>();
  private final Map<String, Double> flow = new HashMap<>();

  SpanningFlows(Network network) {
    this.network = network;
    grow();
    carry();
  }

  /** Joints, each after the one its tree run leads to. */
  List<String> outwards() {
    return outwards;
  }

  /** The run a joint's inflow takes towards a held joint; null for a held one. */
  Run towardsHeld(String joint) {
    return towardsHeld.get(joint);
  }

  Map<String, Double> flow() {
    return flow;
  }

  /** Whether no run is left over: one held joint to each tree and no loops. */
  boolean isAll() {
    return towardsHeld.size() == network.runs().size();
  }

  private void grow() {
    Deque<String> next = new ArrayDeque<>();
    Set<String> seen = new HashSet<>();
    for (Joint joint : network.joints()) {
      if (joint.isHeld()) {
        next.add(joint.id());
        seen.add(joint.id());
      }
    }
    while (!next.isEmpty()) {
      String here = next.remove();
      outwards.add(here);
      for (Run run : network.at(here)) {
        String other = run.otherEnd(here);
        if (seen.add(other)) {
          towardsHeld.put(other, run);
          next.add(other);
        }
      }
    }
  }

  private void carry() {
    Map<String, Double> still = new HashMap<>();
    network.runs().forEach(run -> still.put(run.id(), 0.0));
    flow.putAll(balanced(still));
  }

  /**
   * Flows that satisfy every free joint to the last digit: runs beside the tree keep theirs, and
   * the tree's own carry what that leaves.
   */
  Map<String, Double> balanced(Map<String, Double> given) {
    Map<String, Double> exact = new HashMap<>(given);
    Set<Run> tree = Collections.newSetFromMap(new IdentityHashMap<>());
    tree.addAll(towardsHeld.values());
    Map<String, Double> through = new HashMap<>();
    for (Run run : network.runs()) {
      if (!tree.contains(run)) {
        through.merge(run.from(), -given.get(run.id()), Double::sum);
        through.merge(run.to(), given.get(run.id()), Double::sum);
      }
    }
    for (int i = outwards.size() - 1; i >= 0; i--) {
      String here = outwards.get(i);
      Run run = towardsHeld.get(here);
      if (run != null) {
        double out = network.joint(here).inflow() + through.getOrDefault(here, 0.0);
        exact.put(run.id(), run.from().equals(here) ? out : -out);
        through.merge(run.otherEnd(here), out, Double::sum);
      }
    }
    return exact;
  }
}
