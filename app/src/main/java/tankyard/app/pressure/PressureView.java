package tankyard.app.pressure;

import java.util.List;
import java.util.Objects;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
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

  /** With what would help on a tab beside the limits. */
  public PressureView(PressureViewModel model, CuresViewModel cures) {
    this.model = model;
    setId("pressure");
    getStyleClass().addAll("panel", "pressure");
    getStylesheets().addAll(FigureGrid.stylesheet(), stylesheet());
    cards.getStyleClass().add("window-cards");
    ScrollPane scroll = new ScrollPane(cards);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("panel-scroll");
    SplitPane split = new SplitPane(scroll, beside(model, cures));
    split.setDividerPositions(0.66);
    EmptyWords empty = new EmptyWords(model.emptyWordsProperty());
    split.visibleProperty().bind(empty.visibleProperty().not());
    setTop(new StaleMark(split, model.freshness()));
    setCenter(new StackPane(split, empty));
    model.picturesProperty().addListener((o, was, is) -> show(is));
    show(model.picturesProperty().get());
  }

  private static TabPane beside(PressureViewModel model, CuresViewModel cures) {
    Tab limits = new Tab("Limits", new LimitTable(model));
    Tab help = new Tab("What would help", new CuresView(cures));
    help.setId("cures-tab");
    TabPane tabs = new TabPane(limits, help);
    tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
    tabs.setId("pressure-tabs");
    return tabs;
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
