package tankyard.app.map;

import java.util.function.Function;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import tankyard.app.edit.Hand;
import tankyard.app.edit.Hand.InHand;
import tankyard.app.map.layers.Painting.Shown;

/** The map's own buttons: what is laid on it, the tape, and the zoom. */
final class MapButtons extends HBox {
  private final MapView view;

  MapButtons(MapViewModel map, MapView view) {
    this.view = view;
    getStyleClass().add("ty-map-buttons");
    setPickOnBounds(false);
    setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
    getChildren()
        .addAll(
            sheet(
                "map-show-results",
                "Results",
                "Box pressures and what sets the window, of the" + " case chosen above",
                Shown::results,
                s -> with(s, 0)),
            sheet(
                "map-show-ground",
                "Ground",
                "Contours from the heights typed on this lease. A"
                    + " water leg over a hill is governed by its crest",
                Shown::ground,
                s -> with(s, 1)),
            sheet(
                "map-show-heights",
                "Heights",
                "Every ground height that was typed, where it was" + " shot",
                Shown::heights,
                s -> with(s, 2)),
            hand(
                map, "map-measure", "Tape", InHand.MEASURE, "Length, bearing and rise along a way"),
            button("map-zoom-in", "+", "Zoom in: + or the wheel", map.actions()::zoomIn),
            button("map-zoom-out", "\u2212", "Zoom out: - or the wheel", map.actions()::zoomOut),
            button("map-fit", "Fit", "The whole lease in view: 0", map.actions()::fit));
  }

  private static Shown with(Shown s, int flipped) {
    return new Shown(
        s.ground() ^ flipped == 1,
        s.grid(),
        s.names(),
        s.results() ^ flipped == 0,
        s.heights() ^ flipped == 2,
        s.key());
  }

  private Node sheet(
      String id, String words, String reason, Predicate<Shown> is, Function<Shown, Shown> flip) {
    ToggleButton button = dressed(new ToggleButton(words), id, reason);
    button.setSelected(is.test(view.shownProperty().get()));
    button.setOnAction(e -> view.shownProperty().set(flip.apply(view.shownProperty().get())));
    view.shownProperty().addListener((o, a, b) -> button.setSelected(is.test(b)));
    return button;
  }

  private static Node hand(MapViewModel map, String id, String words, InHand what, String reason) {
    Hand hand = map.desk().hand();
    ToggleButton button = dressed(new ToggleButton(words), id, reason);
    button.setOnAction(
        e -> {
          if (button.isSelected()) {
            hand.take(what);
          } else {
            hand.putAway();
          }
        });
    hand.inHandProperty().addListener((o, a, b) -> button.setSelected(b == what));
    return button;
  }

  private static Node button(String id, String words, String reason, Runnable action) {
    Button button = dressed(new Button(words), id, reason);
    button.setOnAction(e -> action.run());
    return button;
  }

  private static <B extends ButtonBase> B dressed(B button, String id, String reason) {
    button.setId(id);
    button.setTooltip(new Tooltip(reason));
    button.setAccessibleText(button.getText() + ": " + reason);
    return button;
  }
}
