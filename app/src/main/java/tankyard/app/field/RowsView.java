package tankyard.app.field;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A small table of fields, one line a row, errors below the row they belong to. */
final class RowsView {
  private RowsView() {}

  static Node of(Rows<?> rows, FormView form) {
    VBox box = new VBox();
    box.getStyleClass().add("form-rows");
    if (rows.rows().isEmpty()) {
      Label empty = new Label(rows.whenEmpty());
      empty.getStyleClass().add("form-empty");
      empty.setWrapText(true);
      box.getChildren().add(empty);
    } else {
      box.getChildren().add(grid(rows, form));
    }
    return box;
  }

  private static GridPane grid(Rows<?> rows, FormView form) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("form-grid");
    int width = rows.columns().size() + 1;
    for (int c = 0; c < width; c++) {
      ColumnConstraints column = new ColumnConstraints();
      boolean field = c > 0 && c < width - 1;
      if (!field) {
        column.setMinWidth(Region.USE_PREF_SIZE);
      }
      column.setHgrow(field || width == 2 ? Priority.ALWAYS : Priority.SOMETIMES);
      grid.getColumnConstraints().add(column);
    }
    for (int c = 0; c < rows.columns().size(); c++) {
      grid.add(head(rows.columns().get(c)), c, 0);
    }
    int line = 1;
    for (Rows.Row<?> row : rows.rows()) {
      line = addRow(grid, row, line, width, form);
    }
    return grid;
  }

  private static int addRow(GridPane grid, Rows.Row<?> row, int line, int width, FormView form) {
    Label name = new Label(row.name());
    name.getStyleClass().add("form-label");
    grid.add(name, 0, line);
    int column = 1;
    int below = line + 1;
    for (Entry<?> entry : row.entries()) {
      Control control = form.control(entry);
      control.setMinWidth(56);
      grid.add(control, column++, line);
      grid.add(Describe.error(entry), 0, below++, width, 1);
    }
    row.remove().ifPresent(action -> grid.add(removeButton(action), width - 1, line));
    return below;
  }

  private static Button removeButton(FormAction action) {
    Button button = FormView.button(action);
    button.setText("×");
    button.setAccessibleText(action.why());
    button.getStyleClass().setAll("button", "small", "remove-row");
    return button;
  }

  private static Label head(String words) {
    Label head = new Label(words);
    head.getStyleClass().add("form-column-head");
    head.setMinWidth(Region.USE_PREF_SIZE);
    return head;
  }
}
