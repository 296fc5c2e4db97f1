package tankyard.app.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Puts one small table of entries together, row by row. */
public final class RowsBuilder<R> {
  private final EntryContext<R> context;
  private final String id;
  private final String title;
  private final List<String> columns;
  private final Consumer<Block<R>> done;
  private final List<Rows.Row<R>> rows = new ArrayList<>();
  private String whenEmpty = "";
  private final List<FormAction> actions = new ArrayList<>();

  RowsBuilder(
      EntryContext<R> context,
      String id,
      String title,
      List<String> columns,
      Consumer<Block<R>> done) {
    this.context = context;
    this.id = id;
    this.title = title;
    this.columns = columns;
    this.done = done;
  }

  /**
   * Adds a row.
   *
   * @param fill makes the row's entries, in the order of the columns
   * @param remove what its button does; null where the row must stay
   */
  public <S extends Record> RowsBuilder<R> row(
      String name,
      Part<R, S> subject,
      Class<S> type,
      Consumer<Fields<R, S>> fill,
      Runnable remove) {
    String rowId = id + "-" + (rows.size() + 1);
    List<Entry<R>> entries = new ArrayList<>();
    fill.accept(new Fields<>(context, entries::add, rowId, subject, type));
    Optional<FormAction> button =
        Optional.ofNullable(remove)
            .map(run -> new FormAction(rowId + "-remove", "Remove", "Take out " + name, run));
    rows.add(new Rows.Row<>(name, entries, button));
    return this;
  }

  public RowsBuilder<R> whenEmpty(String words) {
    whenEmpty = words;
    return this;
  }

  public RowsBuilder<R> add(String words, String why, Runnable run) {
    actions.add(new FormAction(id + "-add", words, why, run));
    return this;
  }

  /** Ends the table. */
  public void end() {
    done.accept(new Rows<>(id, title, columns, rows, whenEmpty, actions));
  }
}
