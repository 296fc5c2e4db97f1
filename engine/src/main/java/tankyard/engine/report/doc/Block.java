package tankyard.engine.report.doc;

import java.util.List;

/** A piece of a section. */
public sealed interface Block {

  /** A paragraph. */
  record Words(String text) implements Block {}

  /** A list, one point each. */
  record Points(List<String> points) implements Block {
    public Points {
      points = List.copyOf(points);
    }
  }

  /**
   * Rows and columns.
   *
   * @param title above it; may be empty
   */
  record Table(String title, List<Column> columns, List<List<String>> rows) implements Block {
    public Table {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      for (List<String> row : rows) {
        if (row.size() != columns.size()) {
          throw new IllegalArgumentException(
              "A row of "
                  + row.size()
                  + " cells in a table of "
                  + columns.size()
                  + " columns: "
                  + row);
        }
      }
    }
  }

  /** One column: its head, and whether it holds numbers, which stand to the right. */
  record Column(String head, boolean numbers) {
    public static Column text(String head) {
      return new Column(head, false);
    }

    public static Column number(String head) {
      return new Column(head, true);
    }
  }
}
