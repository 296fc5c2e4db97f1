package tankyard.app.map;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tankyard.app.solve.SolveService;
import tankyard.app.style.Look;

/** The map with what floats on it: its buttons, and a card that teaches while it is empty. */
public final class MapPane extends StackPane {
  private final MapView view;

  public MapPane(MapViewModel map, SolveService solve, Look look) {
    view = new MapView(map, solve, look);
    MapButtons buttons = new MapButtons(map, view);
    VBox teach = teach();
    teach.visibleProperty().bind(map.desk().planProperty().map(plan -> plan.things().isEmpty()));
    getChildren().addAll(view, teach, buttons);
    setAlignment(buttons, Pos.TOP_RIGHT);
    setMinSize(200, 150);
  }

  public MapView view() {
    return view;
  }

  private static VBox teach() {
    Label title = new Label("An empty lease");
    title.getStyleClass().add("ty-title");
    Label words =
        new Label(
            "Drag a well from the rack on the left to where it stands, or click it there and then"
                + " click the map. Then set down a separator and tanks, and draw lines from one to"
                + " the other.\n\nFile \u203a Open the demo lease shows a finished one.");
    words.setWrapText(true);
    VBox card = new VBox(title, words);
    card.setId("map-teach");
    card.getStyleClass().add("ty-teach");
    card.setMouseTransparent(true);
    card.setMaxHeight(USE_PREF_SIZE);
    return card;
  }
}
