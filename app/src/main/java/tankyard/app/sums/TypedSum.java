package tankyard.app.sums;

import java.util.HashMap;
import java.util.Map;
import tankyard.app.field.Part;

/**
 * What was typed for one sum.
 *
 * @param texts by input; what was not typed is not in it
 */
record TypedSum(Map<String, String> texts) {
  TypedSum {
    texts = Map.copyOf(texts);
  }

  static TypedSum nothing() {
    return new TypedSum(Map.of());
  }

  static Part<TypedSum, String> input(String id) {
    return new Part<>(
        typed -> typed.texts.getOrDefault(id, ""), (typed, text) -> typed.with(id, text));
  }

  private TypedSum with(String id, String text) {
    Map<String, String> changed = new HashMap<>(texts);
    if (text.isBlank()) {
      changed.remove(id);
    } else {
      changed.put(id, text);
    }
    return new TypedSum(changed);
  }
}
