package tankyard.engine.catalog.csv;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Splits a file into rows. */
final class CsvRows {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setCommentMarker('#')
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreEmptyLines(true)
          .get();

  private CsvRows() {}

  static List<Row> read(String file, InputStream bytes, Sources sources) {
    List<Row> rows = new ArrayList<>();
    try (CSVParser parser = FORMAT.parse(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
      for (CSVRecord record : parser) {
        long line = parser.getCurrentLineNumber();
        if (!record.isConsistent()) {
          throw new CatalogFormatException(
              file,
              line,
              record.size()
                  + " cells, but there are "
                  + parser.getHeaderNames().size()
                  + " columns; put a cell with a comma in it between quotes.");
        }
        rows.add(new Row(file, line, record.toMap(), sources));
      }
    } catch (UncheckedIOException | IOException | IllegalArgumentException e) {
      throw new CatalogFormatException(file, "this is no CSV file: " + e.getMessage(), e);
    }
    return rows;
  }
}
