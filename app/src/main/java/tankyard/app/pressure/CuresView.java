package tankyard.app.pressure;

import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import tankyard.app.figures.Columns;

/** The button that asks, the table of changes, and below it what no table can say. */
final class CuresView extends BorderPane {
  CuresView(CuresViewModel model) {
    setId("cures");
    getStyleClass().add("cures");
    Button ask = new Button("Work out what would help");
    ask.setId("cures-ask");
    ask.setTooltip(new Tooltip("Try each change on this lease, in pressure and in money"));
    ask.setOnAction(e -> model.ask());
    Label words = wrapped();
    words.setId("cures-words");
    words.textProperty().bind(model.wordsProperty());
    VBox head = new VBox(ask, words);
    head.getStyleClass().add("cures-head");
    setTop(head);
    TableView<CureRow> table = table(model);
    Label below = wrapped();
    below.setId("cures-others");
    below
        .textProperty()
        .bind(
            Bindings.createStringBinding(
                () -> below(model, table),
                model.othersProperty(),
                table.getSelectionModel().selectedItemProperty()));
    ScrollPane scroll = new ScrollPane(below);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("panel-scroll");
    SplitPane split = new SplitPane(table, scroll);
    split.setOrientation(javafx.geometry.Orientation.VERTICAL);
    split.setDividerPositions(0.65);
    split.visibleProperty().bind(Bindings.isNotEmpty(model.othersProperty()));
    setCenter(split);
  }

  /** What must be said with the picked change, then the other ways. */
  private static String below(CuresViewModel model, TableView<CureRow> table) {
    CureRow picked = table.getSelectionModel().getSelectedItem();
    String care = picked == null || picked.care().isEmpty() ? "" : picked.care() + "\n\n";
    return care + model.othersProperty().get();
  }

  private static TableView<CureRow> table(CuresViewModel model) {
    TableView<CureRow> table = new TableView<>(model.rows());
    table.setId("cures-table");
    table.getStyleClass().addAll("figure-table", "dense");
    table.setPlaceholder(new Label("")); // the words above say why
    table.getColumns().add(Columns.number("", 30, CureRow::place, r -> "" + r.place()));
    table.getColumns().add(Columns.words("Change", 300, CureRow::change));
    TableColumn<CureRow, CureRow> gained =
        Columns.number("Gained, " + model.unit(), 104, CureRow::gained, CureRow::gainedDigits);
    table.getColumns().add(gained);
    table.getColumns().add(Columns.number("Least", 60, CureRow::least, CureRow::leastDigits));
    table.getColumns().add(Columns.number("Most", 60, CureRow::most, CureRow::mostDigits));
    table.getColumns().add(Columns.number("Room", 60, CureRow::room, CureRow::roomDigits));
    table.getColumns().add(Columns.number("To mend", 88, CureRow::toMend, r -> "" + r.toMend()));
    table.getColumns().add(Columns.number("Cost", 170, CureRow::cost, CureRow::costDigits));
    table.getColumns().add(Columns.words("Separator", 100, CureRow::separator));
    table
        .getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                model.select(is.thingId());
              }
            });
    model.wordsProperty().addListener((o, was, is) -> gained.setText("Gained, " + model.unit()));
    return table;
  }

  private static Label wrapped() {
    Label label = new Label();
    label.setWrapText(true);
    label.getStyleClass().add("window-note");
    return label;
  }
}
