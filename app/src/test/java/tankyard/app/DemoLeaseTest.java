package tankyard.app;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationTest;
import org.testfx.util.WaitForAsyncUtils;
import tankyard.app.example.TestWorld;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.memory.Memory;
import tankyard.app.style.Look;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.catalog.Catalogs;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Thing;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.window.Window;

/** The main job on the demo lease, from the mouse to the answer and back. */
class DemoLeaseTest extends ApplicationTest {
  private Studio studio;

  @Override
  public void start(Stage stage) {
    Look look = new Look(Memory.forgetful());
    studio = TestWorld.studio(look, Runnable::run);
    Scene scene = new Scene(studio.window(), 1400, 900);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
    studio.store().open(Studio.firstLease(Catalogs.find()));
  }

  @AfterEach
  void letGo() throws Exception {
    release(new KeyCode[0]);
    release(new MouseButton[0]);
    FxToolkit.hideStage();
  }

  private LeaseAnswer answer() {
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(studio.solve().latest().orElseThrow().revision())
        .isEqualTo(studio.store().revision());
    return studio.solve().latest().orElseThrow().answer();
  }

  private double leastPa() {
    Window window = answer().windows().get(0);
    return window.least().orElseThrow().gauge().value().pascals();
  }

  private Point2D onScreen(Thing thing) {
    Camera camera = studio.map().desk().camera();
    MapSpot spot = MapSpot.of(thing.at());
    return studio.mapPane().view().localToScreen(camera.x(spot), camera.y(spot));
  }

  private Tank waterTank() {
    return studio.store().lease().tanks().stream()
        .filter(t -> t.duty() == Tank.Duty.WATER)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void
      a_water_tank_dragged_farther_raises_the_least_gauge_and_the_bill_and_undo_brings_both_back() {
    WaitForAsyncUtils.waitForFxEvents();
    Lease before = studio.store().lease();
    byte[] bytes = LeaseFiles.write(before);
    LeaseAnswer answerBefore = answer();
    double least = leastPa();
    double lineBefore = studio.map().desk().plan().line(waterLeg(before)).orElseThrow().metres();

    Point2D from = onScreen(waterTank());
    moveTo(from).press(MouseButton.PRIMARY);
    for (int i = 1; i <= 5; i++) {
      moveTo(from.add(6 * i, 14 * i)); // Over a higher part of the ridge.
    }
    release(MouseButton.PRIMARY);

    double lineAfter = studio.map().desk().plan().line(waterLeg(before)).orElseThrow().metres();
    assertThat(lineAfter).isGreaterThan(lineBefore);
    assertThat(leastPa()).isGreaterThan(least);
    assertThat(answer().bill().totals().total())
        .isGreaterThan(answerBefore.bill().totals().total());

    push(KeyCode.CONTROL, KeyCode.Z);
    assertThat(LeaseFiles.write(studio.store().lease())).isEqualTo(bytes);
    assertThat(Double.doubleToRawLongBits(leastPa())).isEqualTo(Double.doubleToRawLongBits(least));
    assertThat(answer().bill()).isEqualTo(answerBefore.bill());
  }

  private static String waterLeg(Lease lease) {
    return lease.lines().stream()
        .filter(l -> l.service() == tankyard.engine.lease.Service.WATER_LEG)
        .findFirst()
        .orElseThrow()
        .id();
  }

  @Test
  void a_well_set_down_and_joined_is_worked_out() {
    WaitForAsyncUtils.waitForFxEvents();
    int wells = studio.store().lease().wells().size();
    Thing separator = studio.store().lease().separators().get(0);
    Point2D at = onScreen(separator).add(-250, -40);
    clickOn("#rack-well");
    clickOn(at);
    assertThat(studio.store().lease().wells()).hasSize(wells + 1);
    String id = studio.store().lease().wells().get(wells).id();
    clickOn("#rack-line");
    clickOn(at);
    Thing tee = studio.store().lease().tees().get(0);
    clickOn(onScreen(tee));
    assertThat(studio.store().lease().linesOf(id)).hasSize(1);
    assertThat(answer().cases().get(0).well(id)).isPresent();
  }
}
