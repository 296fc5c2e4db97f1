package tankyard.app.takeoff;

import java.util.List;
import java.util.Objects;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tankyard.app.figures.EmptyWords;
import tankyard.app.figures.FigureGrid;
import tankyard.app.figures.StaleMark;

/** The lines on the left, the sums and what must be said with them on the right. */
public final class TakeoffView extends BorderPane {
  private final TakeoffViewModel model;
  private final GridPane sums = new GridPane();
  private final VBox warnings = new VBox();

  public TakeoffView(TakeoffViewModel model) {
    this.model = model;
    setId("takeoff");
    getStyleClass().addAll("panel", "takeoff");
    getStylesheets()
        .addAll(
            FigureGrid.stylesheet(),
            Objects.requireNonNull(getClass().getResource("takeoff.css")).toExternalForm());
    EmptyWords empty = new EmptyWords(model.emptyWordsProperty());
    SplitPane split = new SplitPane(new BillTable(model), side());
    split.setDividerPositions(0.77);
    split.visibleProperty().bind(empty.visibleProperty().not());
    setTop(new StaleMark(split, model.freshness()));
    setCenter(new StackPane(split, empty));
    model.sumsProperty().addListener((o, was, is) -> showSums(is));
    model.warningsProperty().addListener((o, was, is) -> showWarnings(is));
    showSums(model.sumsProperty().get());
    showWarnings(model.warningsProperty().get());
  }

  private Node side() {
    ColumnConstraints label = new ColumnConstraints();
    label.setHgrow(Priority.ALWAYS);
    ColumnConstraints amount = new ColumnConstraints();
    amount.setHalignment(HPos.RIGHT);
    sums.getColumnConstraints().addAll(label, amount);
    sums.getStyleClass().add("bill-sums");
    warnings.getStyleClass().add("bill-warnings");
    VBox side = new VBox(sums, warnings, buttons());
    side.getStyleClass().add("bill-side");
    ScrollPane scroll = new ScrollPane(side);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().addAll("panel-scroll", "bill-scroll");
    SplitPane.setResizableWithParent(scroll, false);
    return scroll;
  }

  private Node buttons() {
    Button copy = new Button("Copy");
    copy.setId("bill-copy");
    copy.setTooltip(new Tooltip("Copies all lines, to be pasted into a spreadsheet"));
    copy.setOnAction(e -> model.copy());
    Button export = new Button("Save as CSV…");
    export.setId("bill-export");
    export.setTooltip(new Tooltip("Writes all lines and sums to a file a spreadsheet opens"));
    export.setOnAction(e -> model.exportCsv());
    HBox bar = new HBox(copy, export);
    bar.getChildren().forEach(b -> b.getStyleClass().add("small"));
    bar.getStyleClass().add("bill-buttons");
    return bar;
  }

  private void showSums(List<SumRow> rows) {
    sums.getChildren().clear();
    for (int i = 0; i < rows.size(); i++) {
      SumRow row = rows.get(i);
      Label label = new Label(row.label());
      label.getStyleClass().add(row.isTotal() ? "bill-total" : "bill-sum");
      label.setWrapText(true);
      label.setMinHeight(Region.USE_PREF_SIZE);
      Labeled amount = row.isTotal() ? total(row) : new Label(row.amount());
      amount.setMinWidth(Region.USE_PREF_SIZE);
      sums.addRow(i, label, amount);
    }
  }

  private Hyperlink total(SumRow row) {
    Hyperlink link = new Hyperlink(row.amount());
    link.setId("bill-total");
    link.getStyleClass().setAll("figure", "figure-link", "bill-total");
    link.setTooltip(new Tooltip("Show the working"));
    link.setOnAction(e -> model.showTotalWorking());
    return link;
  }

  private void showWarnings(List<String> words) {
    warnings.getChildren().setAll(words.stream().map(TakeoffView::warning).toList());
  }

  private static Label warning(String words) {
    Label label = new Label(words);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }
}
