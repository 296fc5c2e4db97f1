package tankyard.engine.network;

import static tankyard.engine.network.PublishedNetwork.METRE_PA;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tankyard.engine.fluids.FlowLaw;
import tankyard.engine.network.elements.Loss;
import tankyard.engine.network.elements.Pump;
import tankyard.engine.network.elements.PumpGain;
import tankyard.engine.verification.Answers;
import tankyard.engine.verification.CheckedRows;

/** Published looped networks, with the head-loss law they were published with. */
class LoopCheckedTest implements CheckedRows {
  private static final double INCH = 0.0254;

  /**
   * Which joints each pipe of the three loops runs between, as the loops in the file hang together.
   */
  private static final Map<Integer, String> THREE_LOOPS =
      Map.of(
          1, "A B", 2, "B C", 3, "C D", 4, "D E", 5, "E A", 6, "D F", 7, "F G", 8, "G E", 9, "C H",
          10, "H F");

  @Override
  public String topic() {
    return "networks";
  }

  @Override
  public void compute(Answers answers) {
    threeLoops(answers);
    twoLoops(answers);
    thirtyPipesAndAPump(answers);
  }

  /** Three passes by hand give the published column; our solver goes on to the end. */
  private static void threeLoops(Answers answers) {
    JsonNode data = PublishedNetwork.read("net-hardy-cross-3loop.json").data();
    Map<Integer, Double> resistance = new LinkedHashMap<>();
    for (JsonNode pipe : data.get("pipes")) {
      resistance.put(
          pipe.get("id").asInt(),
          8
              * pipe.get("f").asDouble()
              * pipe.get("L").asDouble()
              / (9.80665 * Math.PI * Math.PI * Math.pow(pipe.get("D").asDouble(), 5)));
    }
    HandPasses hand = new HandPasses(data.get("loops"), data.get("initial_flows"), resistance);
    Solved solved = NetworkSolver.solve(network(hand.flow(), resistance));
    for (int pass = 0; pass < 3; pass++) {
      hand.pass();
    }
    hand.flow().forEach((pipe, flow) -> answers.put("NET-01", "by-hand-" + pipe, flow));
    hand.flow().keySet().forEach(p -> answers.put("NET-01", "flow-" + p, solved.flow("" + p)));
    answers.put("NET-01", "energy", solved.audit().worstEnergyPa());
  }

  /** What enters and leaves at the joints follows from the flows the hand calculation starts at. */
  private static Network network(Map<Integer, Double> start, Map<Integer, Double> resistance) {
    Map<String, Double> inflow = new LinkedHashMap<>();
    List<Run> runs = new ArrayList<>();
    start.forEach(
        (pipe, flow) -> {
          String[] ends = THREE_LOOPS.get(pipe).split(" ");
          inflow.merge(ends[0], flow, Double::sum);
          inflow.merge(ends[1], -flow, Double::sum);
          FlowLaw law = FlowLaw.quadratic(resistance.get(pipe) * METRE_PA);
          runs.add(new Run("" + pipe, ends[0], ends[1], new Loss(law)));
        });
    List<Joint> joints = new ArrayList<>();
    inflow.forEach((id, q) -> joints.add(id.equals("A") ? Joint.held(id, 0) : Joint.free(id, q)));
    return Network.of(joints, runs);
  }

  private static void twoLoops(Answers answers) {
    PublishedNetwork net = PublishedNetwork.read("net-two-loop.json");
    List<Joint> joints = net.joints(1.0 / 3600);
    JsonNode source = net.data().at("/reservoirs/0");
    joints.add(Joint.held(source.get("id").asText(), source.get("head").asDouble() * METRE_PA));
    JsonNode design = net.data().get("best_known_design");
    List<Run> runs = net.pipes(pipe -> design.get(pipe.get("id").asText()).asInt() * INCH);
    Solved solved = NetworkSolver.solve(Network.of(joints, runs));
    answers.put(
        "NET-02",
        "cost",
        net.cost(pipe -> unitCost(net.data(), design.get(pipe.get("id").asText()).asInt())));
    for (JsonNode node : net.data().get("nodes")) {
      answers.put("NET-02", "head-" + node.get("id").asText(), net.headOver(node, solved));
    }
  }

  private static double unitCost(JsonNode data, int inches) {
    for (JsonNode cost : data.get("costs")) {
      if (cost.get("diameter_in").asInt() == inches) {
        return cost.get("unit_cost_per_m").asDouble();
      }
    }
    throw new IllegalStateException("no cost for " + inches + " in");
  }

  private static void thirtyPipesAndAPump(Answers answers) {
    PublishedNetwork net = PublishedNetwork.read("net-goyang.json");
    List<Joint> joints = net.joints(1e-3);
    joints.add(Joint.held("tank", 71 * METRE_PA));
    List<Run> runs = net.pipes(pipe -> diameter(pipe) / 1e3);
    // The curve of constant power is followed from half of this pressure down; the duty lies below.
    runs.add(new Run("pump", "tank", "1", new Pump(new PumpGain.ConstantPower(4520, 1e6))));
    Solved solved = NetworkSolver.solve(Network.of(joints, runs));
    JsonNode price = net.data().get("unit_cost");
    answers.put(
        "NET-03", "cost", net.cost(pipe -> price.get("" + (int) diameter(pipe)).asDouble()));
    double lowest = Double.POSITIVE_INFINITY;
    for (JsonNode node : net.data().get("nodes")) {
      if (node.get("demand").asDouble() == 0) {
        continue; // the pump's own outlet
      }
      lowest = Math.min(lowest, net.headOver(node, solved));
    }
    answers.put("NET-03", "lowest-head", lowest);
    answers.put("NET-03", "pump-head", solved.pressurePa("1") / METRE_PA - 71);
    answers.put("NET-03", "energy", solved.audit().worstEnergyPa());
  }

  private static double diameter(JsonNode pipe) {
    return pipe.get("original_diameter_mm").asDouble();
  }
}
