package tankyard.app.rack;

import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import tankyard.app.edit.Hand;
import tankyard.app.edit.Hand.InHand;
import tankyard.app.style.Look;

/** The things to set down, in the order the fluid meets them, and the pen for lines. */
public final class RackView extends ScrollPane {

  public RackView(Hand hand, Look look) {
    VBox items = new VBox();
    items.getStyleClass().add("ty-rack");
    items.getChildren().add(heading("SET DOWN"));
    for (InHand what : InHand.values()) {
      what.thing()
          .ifPresent(kind -> items.getChildren().add(RackItem.thing(hand, what, kind, look)));
    }
    items.getChildren().add(heading("CONNECT"));
    items.getChildren().add(RackItem.line(hand, look));
    setId("rack");
    getStyleClass().add("ty-side");
    setContent(items);
    setFitToWidth(true);
    setFitToHeight(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    setPrefWidth(190);
    setMinWidth(USE_PREF_SIZE);
  }

  private static Label heading(String words) {
    Label label = new Label(words);
    label.getStyleClass().add("ty-heading");
    return label;
  }
}
