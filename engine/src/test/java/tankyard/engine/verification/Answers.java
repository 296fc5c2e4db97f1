package tankyard.engine.verification;

import java.util.LinkedHashMap;
import java.util.Map;

/** Our numbers, by example and key. */
public final class Answers {
  private final Map<String, Double> byRow = new LinkedHashMap<>();

  /** Our number for the row of that example with that key, in the row's unit. */
  public void put(String example, String key, double ours) {
    if (byRow.put(example + " " + key, ours) != null) {
      throw new IllegalStateException(example + " " + key + " was computed twice");
    }
  }

  Map<String, Double> byRow() {
    return byRow;
  }
}
