package tankyard.engine.network;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import tankyard.engine.fluids.Drop;
import tankyard.engine.network.elements.Loss;

/** A published network as its file beside the checks has it; heads stand as pressures of water. */
record PublishedNetwork(JsonNode data) {
  static final double METRE_PA = 9806.65;

  static PublishedNetwork read(String file) {
    try (InputStream in = PublishedNetwork.class.getResourceAsStream("/checks/" + file)) {
      return new PublishedNetwork(new ObjectMapper().readTree(in));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Its joints, drawing off what the file says.
   *
   * @param perUnit m3/s in the file's unit of flow
   */
  List<Joint> joints(double perUnit) {
    List<Joint> joints = new ArrayList<>();
    for (JsonNode node : data.get("nodes")) {
      joints.add(Joint.free(node.get("id").asText(), -node.get("demand").asDouble() * perUnit));
    }
    return joints;
  }

  /** Its pipes by Hazen-Williams with the bores of one design. */
  List<Run> pipes(ToDoubleFunction<JsonNode> boreM) {
    List<Run> runs = new ArrayList<>();
    for (JsonNode pipe : data.get("pipes")) {
      runs.add(
          new Run(
              pipe.get("id").asText(),
              pipe.get("from").asText(),
              pipe.get("to").asText(),
              hazenWilliams(
                  pipe.get("length").asDouble(),
                  boreM.applyAsDouble(pipe),
                  pipe.get("C").asDouble())));
    }
    return runs;
  }

  /** What the pipes of a design cost; the file prices a metre of each. */
  double cost(ToDoubleFunction<JsonNode> perMetre) {
    double cost = 0;
    for (JsonNode pipe : data.get("pipes")) {
      cost += pipe.get("length").asDouble() * perMetre.applyAsDouble(pipe);
    }
    return cost;
  }

  /** Metres of water over a joint's own height. */
  double headOver(JsonNode node, Solved solved) {
    double head = solved.pressurePa(node.get("id").asText()) / METRE_PA;
    return head - node.get("elevation").asDouble();
  }

  /** h = 10.667 C^-1.852 D^-4.871 L Q^1.852, metres and m3/s, as the benchmarks state it. */
  private static Link hazenWilliams(double length, double diameter, double c) {
    double r = 10.667 * Math.pow(c, -1.852) * Math.pow(diameter, -4.871) * length * METRE_PA;
    return new Loss(flow -> new Drop(r * Math.pow(flow, 1.852), 1.852 * r * Math.pow(flow, 0.852)));
  }
}
