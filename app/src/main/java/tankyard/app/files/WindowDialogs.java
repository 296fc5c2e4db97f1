package tankyard.app.files;

import java.util.List;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.stage.Modality;
import javafx.stage.Stage;
import javafx.stage.Window;
import tankyard.app.style.Look;

/** Asks in a small window of our own in front of the big one. */
public final class WindowDialogs implements Dialogs {
  private static final double WIDTH_PX = 440;

  private final Supplier<Window> owner;
  private final Look look;

  public WindowDialogs(Supplier<Window> owner, Look look) {
    this.owner = owner;
    this.look = look;
  }

  /** One answer. */
  private record Choice<A>(String id, String words, A answer) {}

  @Override
  public Unsaved askUnsaved(String leaseName) {
    return ask(
        "Save the changes to " + leaseName + "?",
        "They are in no file yet and are lost if you go on without saving.",
        List.of(
            new Choice<>("dialog-save", "Save", Unsaved.SAVE),
            new Choice<>("dialog-drop", "Don't save", Unsaved.DROP),
            new Choice<>("dialog-stay", "Go back", Unsaved.STAY)),
        Unsaved.STAY);
  }

  @Override
  public boolean ask(String title, String words, String yes) {
    return ask(
        title,
        words,
        List.of(
            new Choice<>("dialog-yes", yes, Boolean.TRUE),
            new Choice<>("dialog-no", "No", Boolean.FALSE)),
        Boolean.FALSE);
  }

  @Override
  public void tell(String title, String words) {
    ask(title, words, List.of(new Choice<>("dialog-ok", "OK", Boolean.TRUE)), Boolean.TRUE);
  }

  private <A> A ask(String title, String words, List<Choice<A>> choices, A ifClosed) {
    Stage stage = new Stage();
    Object[] answer = {ifClosed};
    HBox buttons = new HBox(8);
    buttons.setAlignment(Pos.CENTER_RIGHT);
    for (Choice<A> choice : choices) {
      Button button = new Button(choice.words());
      button.setId(choice.id());
      button.setDefaultButton(choice == choices.get(0));
      button.setCancelButton(choice.answer().equals(ifClosed) && choices.size() > 1);
      button.setOnAction(
          e -> {
            answer[0] = choice.answer();
            stage.close();
          });
      buttons.getChildren().add(button);
    }
    stage.setScene(new Scene(content(title, words, buttons)));
    look.dress(stage.getScene());
    stage.initOwner(owner.get());
    stage.initModality(Modality.WINDOW_MODAL);
    stage.setTitle("Tankyard");
    stage.setResizable(false);
    stage.showAndWait();
    @SuppressWarnings("unchecked")
    A given = (A) answer[0];
    return given;
  }

  private static VBox content(String title, String words, HBox buttons) {
    Label head = new Label(title);
    head.setId("dialog-title");
    head.getStyleClass().add("ty-title");
    head.setWrapText(true);
    Label body = new Label(words);
    body.setId("dialog-words");
    body.setWrapText(true);
    body.setMinHeight(Label.USE_PREF_SIZE);
    VBox box = new VBox(12, head, body, buttons);
    box.setPrefWidth(WIDTH_PX);
    box.getStyleClass().add("ty-dialog");
    return box;
  }
}
