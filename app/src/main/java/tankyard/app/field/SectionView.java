package tankyard.app.field;

import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** Labels on the left, fields on the right; an error takes the whole width below its field. */
final class SectionView {
  private static final double LABEL_SHARE = 44;

  private SectionView() {}

  static GridPane of(Section<?> section, FormView form) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("form-grid");
    grid.getColumnConstraints().addAll(share(LABEL_SHARE), share(100 - LABEL_SHARE));
    int row = 0;
    for (Entry<?> entry : section.entries()) {
      row = add(grid, entry, form.control(entry), row);
    }
    return grid;
  }

  private static int add(GridPane grid, Entry<?> entry, Control control, int row) {
    boolean wide = entry.isWide();
    int below = wide ? row + 1 : row;
    grid.add(label(entry, control), 0, row, wide ? 2 : 1, 1);
    grid.add(control, wide ? 0 : 1, below, wide ? 2 : 1, 1);
    grid.add(Describe.error(entry), 0, below + 1, 2, 1);
    return below + 2;
  }

  private static Label label(Entry<?> entry, Control control) {
    Label label = new Label(entry.label());
    label.getStyleClass().add("form-label");
    label.setWrapText(true);
    label.setLabelFor(control);
    label.setTooltip(Describe.tooltip(entry.why()));
    GridPane.setValignment(label, VPos.CENTER);
    GridPane.setHalignment(label, HPos.LEFT);
    return label;
  }

  private static ColumnConstraints share(double percent) {
    ColumnConstraints column = new ColumnConstraints();
    column.setPercentWidth(percent);
    column.setHgrow(Priority.ALWAYS);
    column.setFillWidth(true);
    return column;
  }
}
