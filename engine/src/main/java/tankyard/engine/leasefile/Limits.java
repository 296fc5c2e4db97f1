package tankyard.engine.leasefile;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
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
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    try (Reader in =
        new InputStreamReader(Limits.class.getResourceAsStream(RESOURCE), StandardCharsets.UTF_8)) {
      return format.parse(in).stream()
          .collect(
              Collectors.toUnmodifiableMap(
                  row -> row.get("record") + "." + row.get("field"), Limits::limit));
    } catch (IOException e) {
      throw new UncheckedIOException(RESOURCE + " must be on the class path", e);
    }
  }

  private static Limit limit(CSVRecord row) {
    return new Limit(
        Double.parseDouble(row.get("least")),
        Double.parseDouble(row.get("most")),
        Unit.valueOf(row.get("unit")));
  }
}
