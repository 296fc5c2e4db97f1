package tankyard.app.working;

import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.scene.Scene;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.stage.Modality;
import javafx.stage.Stage;
import javafx.stage.Window;
import tankyard.engine.working.Working;

/** A small window beside the work; it stays while one goes on clicking numbers. */
public final class WorkingWindow {
  private final Supplier<Window> owner;
  private final WorkingViewModel model = new WorkingViewModel(WorkingWindow::toClipboard);
  private Stage stage;

  /**
   * Not shown yet.
   *
   * @param owner the window it belongs to, asked when it is first shown
   */
  public WorkingWindow(Supplier<Window> owner) {
    this.owner = owner;
  }

  public void show(Working working) {
    model.open(working);
    if (stage == null) {
      stage = make();
    }
    stage.setTitle("Working: " + working.title());
    stage.show();
    stage.toFront();
  }

  private Stage make() {
    Stage made = new Stage();
    made.initOwner(owner.get());
    made.initModality(Modality.NONE);
    Scene scene = new Scene(new WorkingView(model), 480, 460);
    scene.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ESCAPE) {
            made.hide();
          }
        });
    // Light or dark as its owner is, and as it will be.
    Bindings.bindContent(scene.getStylesheets(), owner.get().getScene().getStylesheets());
    made.setScene(scene);
    return made;
  }

  private static void toClipboard(String text) {
    ClipboardContent content = new ClipboardContent();
    content.putString(text);
    Clipboard.getSystemClipboard().setContent(content);
  }
}
