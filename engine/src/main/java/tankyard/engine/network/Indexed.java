package tankyard.engine.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A network by numbers, for the inner loops. Free joints come first and are the unknowns; held ones
 * follow.
 */
final class Indexed {
  final List<Run> runs;
  final List<Joint> joints = new ArrayList<>();
  final int free;
  final Link[] link;
  final int[] from;
  final int[] to;
  final double[] inflow;

  Indexed(Network network) {
    runs = network.runs();
    network.joints().stream().filter(j -> !j.isHeld()).forEach(joints::add);
    free = joints.size();
    network.joints().stream().filter(Joint::isHeld).forEach(joints::add);
    Map<String, Integer> number = new HashMap<>();
    for (int j = 0; j < joints.size(); j++) {
      number.put(joints.get(j).id(), j);
    }
    link = runs.stream().map(Run::link).toArray(Link[]::new);
    from = runs.stream().mapToInt(r -> number.get(r.from())).toArray();
    to = runs.stream().mapToInt(r -> number.get(r.to())).toArray();
    inflow = joints.stream().mapToDouble(Joint::inflow).toArray();
  }

  /** The joint a flow comes from. */
  int upstream(int run, double flow) {
    return flow >= 0 ? from[run] : to[run];
  }

  /** The joint a flow goes to. */
  int downstream(int run, double flow) {
    return flow >= 0 ? to[run] : from[run];
  }

  double[] flows(Map<String, Double> byId) {
    return runs.stream().mapToDouble(r -> byId.get(r.id())).toArray();
  }

  double[] pressures(Map<String, Double> byId) {
    return joints.stream().mapToDouble(j -> byId.get(j.id())).toArray();
  }

  Map<String, Double> flowsById(double[] flow) {
    Map<String, Double> byId = new HashMap<>();
    for (int i = 0; i < flow.length; i++) {
      byId.put(runs.get(i).id(), flow[i]);
    }
    return byId;
  }

  Map<String, Double> pressuresById(double[] pressure) {
    Map<String, Double> byId = new HashMap<>();
    for (int j = 0; j < pressure.length; j++) {
      byId.put(joints.get(j).id(), pressure[j]);
    }
    return byId;
  }
}
