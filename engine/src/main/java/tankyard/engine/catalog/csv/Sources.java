package tankyard.engine.catalog.csv;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The sources that a catalogue's rows name by key. */
final class Sources {
  private final Map<String, String> citations;

  private Sources(Map<String, String> citations) {
    this.citations = citations;
  }

  static Sources none() {
    return new Sources(Map.of());
  }

  static Sources of(List<Row> rows) {
    Map<String, String> citations = new LinkedHashMap<>();
    for (Row row : rows) {
      if (citations.put(row.text("key"), row.text("citation")) != null) {
        throw row.wrong("The source \"" + row.text("key") + "\" is there twice.");
      }
    }
    return new Sources(citations);
  }

  Optional<String> citation(String key) {
    return Optional.ofNullable(citations.get(key));
  }
}
