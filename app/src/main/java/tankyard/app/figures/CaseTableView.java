package tankyard.app.figures;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;

/** A panel of figures: its sets side by side as far as there is room. */
public final class CaseTableView extends BorderPane {
  private final CaseTableModel model;
  private final FlowPane page = new FlowPane();

  /**
   * A panel.
   *
   * @param id of the panel's node
   */
  public CaseTableView(String id, CaseTableModel model) {
    this.model = model;
    setId(id);
    getStyleClass().add("panel");
    getStylesheets().add(FigureGrid.stylesheet());
    page.getStyleClass().add("figure-page");
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("panel-scroll");
    EmptyWords empty = new EmptyWords(model.emptyWordsProperty());
    scroll.visibleProperty().bind(empty.visibleProperty().not());
    setTop(new StaleMark(scroll, model.freshness()));
    setCenter(new StackPane(scroll, empty));
    model.tableProperty().addListener((o, was, is) -> show(is));
    show(model.tableProperty().get());
  }

  private void show(CaseTable table) {
    List<Node> grids = new ArrayList<>();
    for (FigureSet set : table.sets()) {
      grids.add(new FigureGrid(table.columns(), model::show, model::select).add(set));
    }
    page.getChildren().setAll(grids);
  }
}
