package tankyard.app.pressure;

import java.util.List;
import java.util.Objects;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tankyard.app.figures.EmptyWords;
import tankyard.app.figures.FigureGrid;
import tankyard.app.figures.StaleMark;

/** The pictures on the left, the table of all limits on the right. */
public final class PressureView extends BorderPane {
  private final PressureViewModel model;
  private final VBox cards = new VBox();

  public PressureView(PressureViewModel model) {
    this.model = model;
    setId("pressure");
    getStyleClass().addAll("panel", "pressure");
    getStylesheets().addAll(FigureGrid.stylesheet(), stylesheet());
    cards.getStyleClass().add("window-cards");
    ScrollPane scroll = new ScrollPane(cards);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("panel-scroll");
    SplitPane split = new SplitPane(scroll, new LimitTable(model));
    split.setDividerPositions(0.66);
    EmptyWords empty = new EmptyWords(model.emptyWordsProperty());
    split.visibleProperty().bind(empty.visibleProperty().not());
    setTop(new StaleMark(split, model.freshness()));
    setCenter(new StackPane(split, empty));
    model.picturesProperty().addListener((o, was, is) -> show(is));
    show(model.picturesProperty().get());
  }

  private void show(List<WindowPicture> pictures) {
    cards
        .getChildren()
        .setAll(pictures.stream().map(p -> new WindowCard(p, model::select, model::show)).toList());
  }

  private static String stylesheet() {
    return Objects.requireNonNull(PressureView.class.getResource("pressure.css")).toExternalForm();
  }
}
