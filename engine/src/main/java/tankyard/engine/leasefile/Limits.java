package tankyard.engine.leasefile;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tankyard.engine.units.Unit;

/** The table of limits, by record and field. */
final class Limits {
  private static final String RESOURCE = "limits.csv";
  private static final Map<String, Limit> TABLE = load();

  private Limits() {}

  static Optional<Limit> of(Class<?> owner, String field) {
    return Optional.ofNullable(TABLE.get(owner.getSimpleName() + "." + field));
  }

  static Map<String, Limit> table() {
    return TABLE;
  }

  private static Map<String, Limit> load() {
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(
                Limits.class.getResourceAsStream(RESOURCE), StandardCharsets.UTF_8))) {
      return in.lines()
          .filter(line -> !line.startsWith("#") && !line.startsWith("record,"))
          .map(line -> line.split(",", -1))
          .collect(Collectors.toUnmodifiableMap(cells -> cells[0] + "." + cells[1], Limits::limit));
    } catch (IOException e) {
      throw new UncheckedIOException(RESOURCE + " must be on the class path", e);
    }
  }

  private static Limit limit(String[] cells) {
    return new Limit(
        Double.parseDouble(cells[2]), Double.parseDouble(cells[3]), Unit.valueOf(cells[4]));
  }
}
