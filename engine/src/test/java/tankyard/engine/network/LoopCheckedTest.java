package tankyard.engine.network;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import tankyard.engine.verification.Answers;
import tankyard.engine.verification.CheckedRows;

/** Published looped networks, with the head-loss law they were published with. */
class LoopCheckedTest implements CheckedRows {
  private static final double HEAD_PA = 9806.65;
  private static final double INCH = 0.0254;

  @Override
  public String topic() {
    return "networks";
  }

  @Override
  public void compute(Answers answers) {
    JsonNode data = data("net-two-loop.json");
    List<Joint> joints = new ArrayList<>();
    JsonNode source = data.at("/reservoirs/0");
    joints.add(Joint.held(source.get("id").asText(), source.get("head").asDouble() * HEAD_PA));
    data.get("nodes")
        .forEach(
            n -> joints.add(Joint.free(n.get("id").asText(), -n.get("demand").asDouble() / 3600)));
    List<Run> runs = new ArrayList<>();
    double cost = 0;
    for (JsonNode pipe : data.get("pipes")) {
      String id = pipe.get("id").asText();
      int inches = data.get("best_known_design").get(id).asInt();
      double length = pipe.get("length").asDouble();
      cost += length * unitCost(data, inches);
      runs.add(
          new Run(
              id,
              pipe.get("from").asText(),
              pipe.get("to").asText(),
              hazenWilliams(length, inches * INCH, pipe.get("C").asDouble())));
    }
    Solved solved = NetworkSolver.solve(new Network(joints, runs));
    answers.put("NET-02", "cost", cost);
    for (JsonNode node : data.get("nodes")) {
      String id = node.get("id").asText();
      double head = solved.pressurePa(id) / HEAD_PA - node.get("elevation").asDouble();
      answers.put("NET-02", "head-" + id, head);
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

  /** h = 10.667 C^-1.852 D^-4.871 L Q^1.852, metres and m3/s, as the benchmark states it. */
  private static Link hazenWilliams(double length, double diameter, double c) {
    double r = 10.667 * Math.pow(c, -1.852) * Math.pow(diameter, -4.871) * length * HEAD_PA;
    return (flow, downstream) ->
        new Link.Upstream(
            downstream + r * Math.pow(Math.abs(flow), 1.852),
            1.852 * r * Math.pow(Math.abs(flow), 0.852),
            1);
  }

  private static JsonNode data(String file) {
    try (InputStream in = LoopCheckedTest.class.getResourceAsStream("/checks/" + file)) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
