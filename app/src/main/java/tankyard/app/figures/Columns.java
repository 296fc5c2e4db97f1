package tankyard.app.figures;

import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.Tooltip;
import tankyard.engine.working.Working;

/** Columns of result tables: words to the left, numbers to the right, both sortable. */
public final class Columns {
  private Columns() {}

  public static <S> TableColumn<S, String> words(
      String title, double width, Function<S, String> of) {
    TableColumn<S, String> column = new TableColumn<>(title);
    column.setPrefWidth(width);
    column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(of.apply(row.getValue())));
    column.setCellFactory(c -> new WordsCell<>());
    return column;
  }

  /** A number shown as these digits and sorted by its value. */
  public static <S> TableColumn<S, S> number(
      String title, double width, ToDoubleFunction<S> value, Function<S, String> digits) {
    TableColumn<S, S> column = whole(title, width, value);
    column.setCellFactory(
        c ->
            new TableCell<>() {
              @Override
              protected void updateItem(S row, boolean empty) {
                super.updateItem(row, empty);
                setText(empty || row == null ? null : digits.apply(row));
              }
            });
    return column;
  }

  /** A number that leads to its working. */
  public static <S> TableColumn<S, S> worked(
      String title,
      double width,
      ToDoubleFunction<S> value,
      Function<S, String> digits,
      Function<S, Supplier<Working>> working,
      Consumer<Working> show) {
    TableColumn<S, S> column = whole(title, width, value);
    column.setCellFactory(
        c ->
            new TableCell<>() {
              @Override
              protected void updateItem(S row, boolean empty) {
                super.updateItem(row, empty);
                setGraphic(
                    empty || row == null
                        ? null
                        : link(digits.apply(row), working.apply(row), show));
              }
            });
    return column;
  }

  private static <S> TableColumn<S, S> whole(
      String title, double width, ToDoubleFunction<S> value) {
    TableColumn<S, S> column = new TableColumn<>(title);
    column.setPrefWidth(width);
    column.getStyleClass().add("number-column");
    column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(row.getValue()));
    column.setComparator((a, b) -> Double.compare(value.applyAsDouble(a), value.applyAsDouble(b)));
    return column;
  }

  /** A number that can be clicked, with a dotted line below. */
  public static Hyperlink link(String digits, Supplier<Working> working, Consumer<Working> show) {
    Hyperlink link = new Hyperlink(digits);
    link.getStyleClass().setAll("figure", "figure-link");
    link.setTooltip(new Tooltip("Show the working"));
    link.setOnAction(e -> show.accept(working.get()));
    return link;
  }
}
