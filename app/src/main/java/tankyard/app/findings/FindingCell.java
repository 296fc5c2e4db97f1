package tankyard.app.findings;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One line of the list: severity, what was found, in which case. */
final class FindingCell extends ListCell<FindingRow> {
  private static final double SEVERITY_WIDTH = 70;

  /** Of the list's scroll bar, with the list's border. */
  private static final double BAR_WIDTH = 16;

  private final Label severity = new Label();
  private final Label words = new Label();
  private final Label caseName = new Label();
  private final VBox both = new VBox(words, caseName);
  private final HBox line = new HBox(severity, both);

  FindingCell() {
    severity.setMinWidth(SEVERITY_WIDTH);
    severity.setAlignment(Pos.CENTER_LEFT);
    words.getStyleClass().add("finding-text");
    words.setWrapText(true);
    words.setMinHeight(Region.USE_PREF_SIZE);
    words.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(both, Priority.ALWAYS);
    caseName.getStyleClass().add("finding-case");
    caseName.managedProperty().bind(caseName.textProperty().isNotEmpty());
    line.getStyleClass().add("finding-line");
    setPrefWidth(0); // as wide as the list, so that the words wrap
  }

  /** Asked before the cell is laid out, when its own width is not known yet; the list's is. */
  @Override
  protected double computePrefHeight(double width) {
    if (getGraphic() == null || getListView() == null || getListView().getWidth() <= 0) {
      return super.computePrefHeight(width);
    }
    double inner = getListView().getWidth() - BAR_WIDTH - snappedLeftInset() - snappedRightInset();
    return snappedTopInset() + snapSizeY(line.prefHeight(inner)) + snappedBottomInset();
  }

  @Override
  protected void updateItem(FindingRow row, boolean empty) {
    super.updateItem(row, empty);
    if (empty || row == null) {
      setGraphic(null);
      return;
    }
    severity.setText(SeverityLook.words(row.severity()));
    severity
        .getStyleClass()
        .setAll("label", "severity", SeverityLook.of(row.severity()).styleClass());
    words.setText(row.words());
    caseName.setText(row.caseName());
    setGraphic(line);
    setAccessibleText(row.severity().words() + ": " + row.words());
  }
}
