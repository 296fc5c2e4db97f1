package tankyard.app.field;

import java.util.List;
import java.util.Optional;

/**
 * A small table of entries under one heading: pegs, cases, fittings.
 *
 * @param whenEmpty what stands there while there is no row: what to do
 * @param actions what adds a row
 */
public record Rows<R>(
    String id,
    String title,
    List<String> columns,
    List<Row<R>> rows,
    String whenEmpty,
    List<FormAction> actions)
    implements Block<R> {
  public Rows {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    actions = List.copyOf(actions);
  }

  /**
   * One row.
   *
   * @param name of the row, in its first column
   * @param remove takes the row out, if that can be done
   */
  public record Row<R>(String name, List<Entry<R>> entries, Optional<FormAction> remove) {
    public Row {
      entries = List.copyOf(entries);
    }
  }

  @Override
  public List<Entry<R>> allEntries() {
    return rows.stream().flatMap(row -> row.entries().stream()).toList();
  }
}
