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
      Control control = form.control(entry);
      grid.add(label(entry, control), 0, row);
      grid.add(control, 1, row);
      grid.add(Describe.error(entry), 0, row + 1, 2, 1);
      row += 2;
    }
    return grid;
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
