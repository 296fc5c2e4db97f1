package tankyard.engine.study;

import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import org.jgrapht.Graph;
import org.jgrapht.alg.cycle.CycleDetector;
import org.jgrapht.graph.DirectedMultigraph;
import org.jgrapht.traverse.TopologicalOrderIterator;
import tankyard.engine.network.Solved;
import tankyard.engine.pipes.LineCooling;
import tankyard.engine.units.HeatLoss;

/**
 * The temperature at which each gathering line takes its fluid in: the wells' where they are known,
 * mixed at each joint by the heat that flows in. Water brought back comes at the ground's
 * temperature.
 */
final class Warmth {
  private final GatheringPlan plan;
  private final Map<String, WellFlow> wells;
  private final Solved solved;
  private final Composition mix;
  private final HeatLoss loss;
  private final double groundK;
  private final Map<String, Double> upstreamK = new HashMap<>();

  private Warmth(
      GatheringPlan plan,
      Map<String, WellFlow> wells,
      Solved solved,
      Composition mix,
      HeatLoss loss,
      double groundK) {
    this.plan = plan;
    this.wells = wells;
    this.solved = solved;
    this.mix = mix;
    this.loss = loss;
    this.groundK = groundK;
  }

  static Warmth of(
      GatheringPlan plan,
      Map<String, WellFlow> wells,
      Solved solved,
      Composition mix,
      HeatLoss loss,
      double groundK) {
    Warmth warmth = new Warmth(plan, wells, solved, mix, loss, groundK);
    Graph<String, String> downhill = new DirectedMultigraph<>(null, null, false);
    plan.joints().forEach(downhill::addVertex);
    for (LaidLine line : plan.lines().values()) {
      boolean forward = solved.flow().get(line.id()) >= 0;
      downhill.addEdge(
          forward ? line.line().from() : line.line().to(),
          forward ? line.line().to() : line.line().from(),
          line.id());
    }
    if (new CycleDetector<>(downhill).detectCycles()) {
      plan.lines().keySet().forEach(id -> warmth.upstreamK.put(id, groundK));
      return warmth; // a flow that goes round warms itself: keep to the ground, the thick side
    }
    Iterator<String> order = new TopologicalOrderIterator<>(downhill);
    while (order.hasNext()) {
      warmth.mixAt(order.next(), downhill);
    }
    return warmth;
  }

  private void mixAt(String joint, Graph<String, String> downhill) {
    double carried = 0;
    double heat = 0;
    WellFlow well = wells.get(joint);
    if (well != null) {
      double made = LineCooling.wattsPerKelvin(well.oil(), well.water() - well.returned());
      carried += made + LineCooling.wattsPerKelvin(0, well.returned());
      heat += made * (well.headK().orElse(groundK) - groundK);
    }
    for (String line : downhill.incomingEdgesOf(joint)) {
      LineCooling cooling = cooling(plan.lines().get(line));
      double over = upstreamK.get(line) - groundK;
      carried += cooling.wattsPerKelvin();
      heat += cooling.wattsPerKelvin() * cooling.left(over, plan.lines().get(line).law().lengthM());
    }
    double kelvins = groundK + (carried > 0 ? heat / carried : 0);
    downhill.outgoingEdgesOf(joint).forEach(line -> upstreamK.put(line, kelvins));
  }

  /**
   * How a line cools at what the network sends through it; strokes come and go too fast to tell.
   */
  LineCooling cooling(LaidLine line) {
    double flow = Math.abs(solved.flow().get(line.id()));
    double cut = mix.waterCut(line.id());
    return new LineCooling(flow * (1 - cut), flow * cut, loss, line.pipe().outside().metres());
  }

  boolean forward(String lineId) {
    return solved.flow().get(lineId) >= 0;
  }

  double upstreamK(String lineId) {
    return upstreamK.get(lineId);
  }

  /** The largest change of any line's temperature, K. */
  double differsFrom(Warmth other) {
    return upstreamK.entrySet().stream()
        .mapToDouble(e -> Math.abs(e.getValue() - other.upstreamK.get(e.getKey())))
        .max()
        .orElse(0);
  }
}
