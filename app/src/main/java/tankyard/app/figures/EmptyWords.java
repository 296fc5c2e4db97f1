package tankyard.app.figures;

import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;

/** What a panel says while it has nothing to show: what to do first. */
public final class EmptyWords extends StackPane {
  public EmptyWords(ObservableValue<String> words) {
    Label label = new Label();
    label.textProperty().bind(words);
    label.getStyleClass().add("empty-words");
    label.setWrapText(true);
    label.setMaxWidth(460);
    setAlignment(Pos.CENTER);
    getChildren().add(label);
    getStyleClass().add("empty-pane");
    visibleProperty().bind(label.textProperty().isNotEmpty());
    managedProperty().bind(visibleProperty());
  }
}
