package tankyard.engine.study;

import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import org.jgrapht.Graph;
import org.jgrapht.alg.cycle.CycleDetector;
import org.jgrapht.graph.DirectedMultigraph;
import org.jgrapht.traverse.TopologicalOrderIterator;
import tankyard.engine.network.Solved;

/** The share of water in every gathering line, mixed at each joint from what flows in. */
final class Composition {
  private final Map<String, Double> waterCut = new HashMap<>();

  /** Before any flow is known: the same mixture everywhere. */
  static Composition even(GatheringPlan plan, double cut) {
    Composition same = new Composition();
    plan.lines().keySet().forEach(id -> same.waterCut.put(id, cut));
    return same;
  }

  static Composition of(
      GatheringPlan plan, Map<String, WellFlow> wells, Solved solved, Composition before) {
    Graph<String, String> downhill = new DirectedMultigraph<>(null, null, false);
    plan.joints().forEach(downhill::addVertex);
    for (LaidLine line : plan.lines().values()) {
      boolean forward = solved.flow().get(line.id()) >= 0;
      String from = forward ? line.line().from() : line.line().to();
      String to = forward ? line.line().to() : line.line().from();
      downhill.addEdge(from, to, line.id());
    }
    if (new CycleDetector<>(downhill).detectCycles()) {
      return before; // a flow that goes round mixes with itself: keep what was taken
    }
    Composition mixed = new Composition();
    Iterator<String> order = new TopologicalOrderIterator<>(downhill);
    while (order.hasNext()) {
      mixed.mixAt(order.next(), downhill, wells, solved);
    }
    return mixed;
  }

  private void mixAt(
      String joint, Graph<String, String> downhill, Map<String, WellFlow> wells, Solved solved) {
    WellFlow well = wells.get(joint);
    double water = well == null ? 0 : well.water();
    double all = well == null ? 0 : well.fluid();
    for (String line : downhill.incomingEdgesOf(joint)) {
      double flow = Math.abs(solved.flow().get(line));
      all += flow;
      water += flow * waterCut.get(line);
    }
    double cut = all > 0 ? Math.min(1, water / all) : 1;
    downhill.outgoingEdgesOf(joint).forEach(line -> waterCut.put(line, cut));
  }

  double waterCut(String lineId) {
    return waterCut.get(lineId);
  }

  /** The largest change of any line's share. */
  double differsFrom(Composition other) {
    return waterCut.entrySet().stream()
        .mapToDouble(e -> Math.abs(e.getValue() - other.waterCut.get(e.getKey())))
        .max()
        .orElse(0);
  }
}
