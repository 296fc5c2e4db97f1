package tankyard.engine.leasefile;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Names for the items of a list that hold when others are added, taken out or moved: the item's id,
 * or whatever else tells it from its neighbours, or its number if nothing does.
 */
record ItemKeys(List<String> keys) {
  private static final List<String> TELLING = List.of("id", "fitting", "at", "temperature");

  static ItemKeys of(JsonNode list) {
    Set<String> keys = new LinkedHashSet<>();
    for (JsonNode item : list) {
      String key = key(item).orElse("#" + keys.size());
      String unique = key;
      for (int n = 2; !keys.add(unique); n++) {
        unique = key + " #" + n;
      }
    }
    return new ItemKeys(List.copyOf(keys));
  }

  private static Optional<String> key(JsonNode item) {
    return TELLING.stream()
        .filter(item::has)
        .map(item::get)
        .map(value -> value.isTextual() ? value.textValue() : LeasePrinter.compact(value))
        .findFirst();
  }

  String at(int index) {
    return keys.get(index);
  }

  Optional<Integer> indexOf(String key) {
    int index = keys.indexOf(key);
    return index < 0 ? Optional.empty() : Optional.of(index);
  }
}
