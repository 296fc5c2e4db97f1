package tankyard.engine.network;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Hardy Cross's loop-by-loop correction as it is done by hand (1936; from memory), for networks
 * whose publication stops after so many passes. A flow counts positive in the sense of the first
 * loop that holds its pipe.
 */
final class HandPasses {
  private final JsonNode loops;
  private final Map<Integer, Double> resistance;
  private final Map<Integer, Double> flow = new LinkedHashMap<>();
  private final Map<Integer, Integer> firstLoop = new HashMap<>();

  HandPasses(JsonNode loops, JsonNode initial, Map<Integer, Double> resistance) {
    this.loops = loops;
    this.resistance = resistance;
    for (int i = 0; i < loops.size(); i++) {
      for (int k = 0; k < loops.get(i).size(); k++) {
        int pipe = loops.get(i).get(k).asInt();
        if (firstLoop.putIfAbsent(pipe, i) == null) {
          flow.put(pipe, initial.get(i).get(k).asDouble());
        }
      }
    }
  }

  /** One pass: every loop's correction from the flows before it, then all of them together. */
  void pass() {
    double[] correction = new double[loops.size()];
    for (int i = 0; i < correction.length; i++) {
      double head = 0;
      double slope = 0;
      for (JsonNode pipe : loops.get(i)) {
        double q = flow.get(pipe.asInt());
        head += sense(i, pipe.asInt()) * resistance.get(pipe.asInt()) * q * Math.abs(q);
        slope += 2 * resistance.get(pipe.asInt()) * Math.abs(q);
      }
      correction[i] = -head / slope;
    }
    for (int i = 0; i < correction.length; i++) {
      for (JsonNode pipe : loops.get(i)) {
        flow.merge(pipe.asInt(), sense(i, pipe.asInt()) * correction[i], Double::sum);
      }
    }
  }

  private int sense(int loop, int pipe) {
    return firstLoop.get(pipe) == loop ? 1 : -1;
  }

  Map<Integer, Double> flow() {
    return flow;
  }
}
