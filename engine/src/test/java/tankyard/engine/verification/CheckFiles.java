package tankyard.engine.verification;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads the rows of one topic. */
final class CheckFiles {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setCommentMarker('#')
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreEmptyLines(true)
          .get();

  private CheckFiles() {}

  static List<CheckRow> rows(String topic) {
    Map<String, CheckExample> examples = new LinkedHashMap<>();
    for (CSVRecord r : records(topic + "-examples.csv")) {
      examples.put(
          r.get("id"),
          new CheckExample(
              r.get("id"),
              r.get("title"),
              r.get("inputs"),
              r.get("source"),
              r.get("known"),
              r.get("note")));
    }
    List<CheckRow> rows = new ArrayList<>();
    for (CSVRecord r : records(topic + "-values.csv")) {
      CheckExample example = examples.get(r.get("example"));
      if (example == null) {
        throw new IllegalStateException(topic + ": no example " + r.get("example"));
      }
      rows.add(
          new CheckRow(
              example,
              r.get("key"),
              r.get("what"),
              CheckRow.Kind.valueOf(r.get("kind").toUpperCase(Locale.ROOT)),
              number(r.get("published")),
              number(r.get("expected")),
              r.get("unit"),
              Double.parseDouble(r.get("tolerance"))));
    }
    return rows;
  }

  private static OptionalDouble number(String cell) {
    return cell.isBlank() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
  }

  private static List<CSVRecord> records(String file) {
    try (InputStream in = CheckFiles.class.getResourceAsStream("/checks/" + file)) {
      if (in == null) {
        throw new IllegalStateException("No file checks/" + file);
      }
      return FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8)).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
