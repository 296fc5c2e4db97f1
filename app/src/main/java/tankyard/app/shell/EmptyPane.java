package tankyard.app.shell;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What stands where there is nothing to show yet: it says why and what to do. */
public final class EmptyPane extends VBox {
  public EmptyPane(String title, String words) {
    getStyleClass().add("ty-empty");
    Label head = new Label(title);
    head.getStyleClass().add("ty-title");
    Label body = new Label(words);
    body.getStyleClass().add("ty-note");
    body.setMaxWidth(420);
    body.setAlignment(Pos.CENTER);
    getChildren().addAll(head, body);
  }
}
