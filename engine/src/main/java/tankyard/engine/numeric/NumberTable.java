package tankyard.engine.numeric;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table that ships with the engine: lines starting with {@code #} name its source, the next line
 * names the columns. A table without a source line is refused.
 */
public final class NumberTable {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setCommentMarker('#')
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreEmptyLines(true)
          .get();

  private final String name;
  private final String source;
  private final List<String> columns;
  private final List<CSVRecord> rows;

  private NumberTable(String name, CSVParser parser) {
    this.name = name;
    if (!parser.hasHeaderComment()) {
      throw new IllegalArgumentException("Table " + name + " does not say its source");
    }
    source = parser.getHeaderComment().replaceAll("\\s+", " ").strip();
    columns = parser.getHeaderNames();
    rows = parser.getRecords();
  }

  /** Reads {@code file} from beside {@code owner}. */
  public static NumberTable beside(Class<?> owner, String file) {
    try (InputStream in = owner.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalArgumentException("No table " + file + " beside " + owner.getName());
      }
      return new NumberTable(file, FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The source lines at the head of the file. */
  public String source() {
    return source;
  }

  public int size() {
    return rows.size();
  }

  /** A column of numbers. */
  public double[] column(String column) {
    return words(column).stream().mapToDouble(Double::parseDouble).toArray();
  }

  /** A column of words. */
  public List<String> words(String column) {
    if (!columns.contains(column)) {
      throw new IllegalArgumentException(
          "Table " + name + " has no column " + column + " but " + columns);
    }
    return rows.stream().map(r -> r.get(column)).toList();
  }
}
