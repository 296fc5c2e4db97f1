package tankyard.app.findings;

import java.util.Locale;
import java.util.Objects;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.ListView;
import javafx.scene.control.SplitPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tankyard.app.figures.EmptyWords;
import tankyard.app.figures.FigureGrid;
import tankyard.app.figures.StaleMark;
import tankyard.engine.checks.Severity;

/** Severities above, the list below, the picked finding beside it. */
public final class FindingsView extends BorderPane {
  private final FindingsViewModel model;
  private final ListView<FindingRow> list;
  private boolean following;

  public FindingsView(FindingsViewModel model) {
    this.model = model;
    list = new ListView<>(model.shown());
    setId("findings");
    getStyleClass().addAll("panel", "findings");
    getStylesheets()
        .addAll(
            FigureGrid.stylesheet(),
            Objects.requireNonNull(getClass().getResource("findings.css")).toExternalForm());
    list.setId("findings-list");
    list.setCellFactory(l -> new FindingCell());
    list.getSelectionModel().selectedItemProperty().addListener((o, was, is) -> pick(is));
    model.pickedProperty().addListener((o, was, is) -> follow(is));
    EmptyWords empty = new EmptyWords(model.emptyWordsProperty());
    list.visibleProperty().bind(empty.visibleProperty().not());
    SplitPane split = new SplitPane(new StackPane(list, empty), new FindingDetail(model));
    split.setDividerPositions(0.64);
    setTop(new VBox(new StaleMark(split, model.freshness()), filters()));
    setCenter(split);
    follow(model.pickedProperty().get());
  }

  private void pick(FindingRow row) {
    if (!following && row != null) {
      model.pickedProperty().set(row);
    }
  }

  /** After new results the same finding stays picked, with its new numbers. */
  private void follow(FindingRow row) {
    following = true;
    if (row == null) {
      list.getSelectionModel().clearSelection();
    } else {
      list.getSelectionModel().select(row);
    }
    following = false;
  }

  private Node filters() {
    HBox bar = new HBox();
    bar.getStyleClass().add("findings-filters");
    for (Severity severity : Severity.values()) {
      ToggleButton button = new ToggleButton();
      button.setId("findings-" + severity.words().toLowerCase(Locale.ROOT));
      button
          .textProperty()
          .bind(
              Bindings.concat(
                  SeverityLook.words(severity), "  ", model.countProperty(severity).asString()));
      button.getStyleClass().addAll("small", SeverityLook.of(severity).styleClass());
      button.setTooltip(new Tooltip("List or hide what is to " + severity.words()));
      button.selectedProperty().bindBidirectional(model.wantedProperty(severity));
      bar.getChildren().add(button);
    }
    return bar;
  }
}
