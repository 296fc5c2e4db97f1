package tankyard.app.sums;

import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.scene.Scene;
import javafx.stage.Modality;
import javafx.stage.Stage;
import javafx.stage.Window;
import tankyard.engine.quick.sums.AllSums;
import tankyard.engine.working.Working;

/** The window of single sums; it stays open beside the lease. */
public final class SumsWindow {
  private final Supplier<Window> owner;
  private final SumsViewModel model;
  private Stage stage;

  /**
   * Not shown yet.
   *
   * @param owner the window it belongs to, asked when it is first shown
   */
  public SumsWindow(Supplier<Window> owner, Consumer<Working> showWorking) {
    this.owner = owner;
    this.model = new SumsViewModel(AllSums.list(), showWorking);
  }

  public void show() {
    if (stage == null) {
      stage = make();
    }
    stage.show();
    stage.toFront();
  }

  private Stage make() {
    Stage made = new Stage();
    made.initOwner(owner.get());
    made.initModality(Modality.NONE);
    made.setTitle("Quick sums");
    Scene scene = new Scene(new SumsView(model), 980, 620);
    // Light or dark as its owner is, and as it will be.
    Bindings.bindContent(scene.getStylesheets(), owner.get().getScene().getStylesheets());
    made.setScene(scene);
    return made;
  }
}
