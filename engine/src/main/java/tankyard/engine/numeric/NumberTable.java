package tankyard.engine.numeric;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * A table of plain numbers that ships with the engine: lines starting with {@code #} name its
 * source, the next line names the columns, and every other line is numbers between commas. Nothing
 * is ever quoted, so no CSV library is needed; price lists and catalogues are read elsewhere.
 */
public final class NumberTable {
  private final String name;
  private final List<String> source;
  private final List<String> columns;
  private final List<double[]> rows;

  private NumberTable(String name, List<String> lines) {
    this.name = name;
    source =
        lines.stream().filter(l -> l.startsWith("#")).map(l -> l.substring(1).strip()).toList();
    List<String> body = lines.stream().filter(l -> !l.startsWith("#") && !l.isBlank()).toList();
    if (source.isEmpty() || body.size() < 2) {
      throw new IllegalArgumentException("Table " + name + " has no source line or no rows");
    }
    columns = List.of(body.get(0).split(","));
    rows = body.stream().skip(1).map(this::row).toList();
  }

  /** Reads {@code file} from beside {@code owner}. */
  public static NumberTable beside(Class<?> owner, String file) {
    try (InputStream in = owner.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalArgumentException("No table " + file + " beside " + owner.getName());
      }
      var reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      return new NumberTable(file, reader.lines().toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The source lines at the head of the file. */
  public String source() {
    return String.join(" ", source);
  }

  public int size() {
    return rows.size();
  }

  public double[] column(String column) {
    int index = columns.indexOf(column);
    if (index < 0) {
      throw new IllegalArgumentException(
          "Table " + name + " has no column " + column + " but " + columns);
    }
    return rows.stream().mapToDouble(r -> r[index]).toArray();
  }

  private double[] row(String line) {
    String[] cells = line.split(",", -1);
    if (cells.length != columns.size()) {
      throw new IllegalArgumentException("Table " + name + ": " + line + " is not " + columns);
    }
    return Arrays.stream(cells).mapToDouble(Double::parseDouble).toArray();
  }
}
