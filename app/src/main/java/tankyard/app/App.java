package tankyard.app;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;
import javafx.util.Duration;
import tankyard.app.files.ChooserPicker;
import tankyard.app.files.LeaseDesk;
import tankyard.app.files.Recovery;
import tankyard.app.files.WindowDialogs;
import tankyard.app.memory.FileMemory;
import tankyard.app.memory.Memory;
import tankyard.app.solve.Background;
import tankyard.app.style.Look;

/** The program in its window: wires everything to the real screen, files and clock. */
public final class App extends Application {
  private static final Duration KEEP_EVERY = Duration.seconds(5);

  private final Background background = new Background();

  @Override
  public void start(Stage stage) {
    Path home = FileMemory.home();
    Memory memory = new FileMemory(home.resolve("studio.properties"));
    Look look = new Look(memory);
    WindowDialogs dialogs = new WindowDialogs(() -> stage, look);
    Opening opening = Opening.get();
    Studio studio =
        new Studio(
            new Studio.Outside(
                opening.catalog(),
                LocalDate.now(ZoneId.systemDefault()),
                memory,
                look,
                dialogs,
                new ChooserPicker(() -> stage, memory),
                background,
                Platform::runLater),
            opening.lease());
    Recovery recovery =
        new Recovery(home.resolve("unsaved"), studio.store(), studio.desk(), dialogs);
    show(stage, studio, look, memory);
    studio.startWith(getParameters().getRaw());
    recovery.offer();
    keepCopies(recovery);
    guard(stage, studio.desk(), recovery::forget);
  }

  /** Lets the window close only once its changes are saved or their owner lets them go. */
  static void guard(Stage stage, LeaseDesk desk, Runnable whenLeft) {
    stage.setOnCloseRequest(
        e -> {
          if (desk.mayLeave()) {
            whenLeft.run();
          } else {
            e.consume();
          }
        });
  }

  private static void show(Stage stage, Studio studio, Look look, Memory memory) {
    WindowSize size = new WindowSize(memory);
    size.apply(stage);
    // With its size from the start: laid out as large as it would like to be and then made smaller,
    // its parts would keep the shares of the large window.
    Scene scene = new Scene(studio.window(), stage.getWidth(), stage.getHeight());
    look.dress(scene);
    stage.setScene(scene);
    stage.setTitle("Tankyard");
    stage.setMinWidth(900);
    stage.setMinHeight(600);
    stage.titleProperty().bind(studio.titleProperty());
    stage.show();
  }

  private static void keepCopies(Recovery recovery) {
    Timeline clock = new Timeline(new KeyFrame(KEEP_EVERY, e -> recovery.keep()));
    clock.setCycleCount(Animation.INDEFINITE);
    clock.play();
  }

  @Override
  public void stop() {
    background.close();
  }
}
