package tankyard.app;

import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationTest;
import org.testfx.util.WaitForAsyncUtils;
import tankyard.app.example.SmallLease;
import tankyard.app.example.TestDialogs;
import tankyard.app.example.TestPicker;
import tankyard.app.example.TestWorld;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.memory.Memory;
import tankyard.app.style.Look;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;

/** The whole window with the small lease in it, and hands for its mouse and keys. */
abstract class StudioFixture extends ApplicationTest {
  final TestDialogs dialogs = new TestDialogs();
  final TestPicker picker = new TestPicker();
  Studio studio;
  Look look;
  Stage stage;
  boolean left;

  @Override
  public void start(Stage stage) {
    look = new Look(Memory.forgetful());
    studio = TestWorld.studio(look, Runnable::run, dialogs, picker);
    Scene scene = new Scene(studio.window(), 1400, 900);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
    App.guard(stage, studio.desk(), () -> left = true);
    this.stage = stage;
    studio.store().open(first());
    studio.mapPane().view().requestFocus();
  }

  /** What stands in the window at first. */
  Lease first() {
    return SmallLease.lease();
  }

  @BeforeEach
  void settle() {
    WaitForAsyncUtils.waitForFxEvents();
  }

  @AfterEach
  void letGo() throws Exception {
    release(new KeyCode[0]);
    release(new MouseButton[0]);
    FxToolkit.hideStage();
  }

  Lease lease() {
    return studio.store().lease();
  }

  MapPoint placeOf(String id) {
    return lease().thing(id).orElseThrow().at();
  }

  Point2D onScreen(MapSpot spot) {
    Camera camera = studio.map().desk().camera();
    return studio.mapPane().view().localToScreen(camera.x(spot), camera.y(spot));
  }

  Point2D onScreen(double eastFt, double northFt) {
    return onScreen(MapSpot.of(SmallLease.at(eastFt, northFt)));
  }

  Point2D thing(String id) {
    return onScreen(MapSpot.of(placeOf(id)));
  }

  FxRobot dragTo(Point2D from, Point2D to) {
    moveTo(from).press(MouseButton.PRIMARY);
    for (int i = 1; i <= 5; i++) {
      moveTo(from.interpolate(to, i / 5.0));
    }
    return release(MouseButton.PRIMARY);
  }
}
