package tankyard.app;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Scene;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationTest;
import org.testfx.util.WaitForAsyncUtils;
import tankyard.app.example.SmallLease;
import tankyard.app.example.TestWorld;
import tankyard.app.memory.Memory;
import tankyard.app.style.Look;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Well;

/** Sheet, strip and workings in the whole window, with the engine's own numbers. */
class PanelsTest extends ApplicationTest {
  private Studio studio;

  @Override
  public void start(Stage stage) {
    Look look = new Look(Memory.forgetful());
    studio = TestWorld.studio(look, Runnable::run);
    Scene scene = new Scene(studio.window(), 1500, 950);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
    studio.store().open(laid());
    studio.map().desk().selection().select("W1");
  }

  /** The small lease, its lines laid with a pipe that can be bought. */
  private static Lease laid() {
    Lease lease = SmallLease.lease();
    for (Line line : lease.lines()) {
      lease = lease.with(line.withPipe("pe4710-dr11-2"));
    }
    return lease;
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

  private double water() {
    return ((Well) studio.store().lease().thing("W1").orElseThrow()).water().toBarrelsPerDay();
  }

  private void type(String id, String text) {
    clickOn("#" + id);
    push(KeyCode.CONTROL, KeyCode.A);
    write(text);
    push(KeyCode.ENTER);
  }

  private double designWater() {
    return studio
        .solve()
        .latest()
        .orElseThrow()
        .answer()
        .cases()
        .get(0)
        .separator("S1")
        .orElseThrow()
        .designWater()
        .value()
        .toBarrelsPerDay();
  }

  @Test
  void aRateTypedInTheSheetIsWorkedOutAndUndoneWithTheKeyboard() {
    double before = designWater();
    type("well-water", "75 bbl/d");
    assertThat(water()).isEqualTo(75);
    assertThat(designWater()).isGreaterThan(before);
    push(KeyCode.CONTROL, KeyCode.Z);
    assertThat(water()).isEqualTo(25);
    assertThat(designWater()).isEqualTo(before);
    assertThat(lookup("#well-water").queryAs(TextField.class).getText()).isEqualTo("25 bbl/d");
  }

  @Test
  void nonsenseSaysWhyBesideTheField() {
    type("well-water", "plenty");
    Label error = lookup("#well-water-error").queryAs(Label.class);
    assertThat(error.getText()).contains("\"plenty\"").contains("bbl/d");
    assertThat(water()).isEqualTo(25);
  }

  @Test
  void theWindowPictureIsThereWithItsSeparator() {
    clickOn("#tab-window");
    assertThat(lookup("#window-S1").tryQuery()).isPresent();
  }

  @Test
  void aNumberOpensItsWorkingAndEscapeClosesIt() {
    clickOn("#tab-tanks");
    Hyperlink number = lookup("#tanks .figure-link").queryAs(Hyperlink.class);
    clickOn(number);
    assertThat(lookup("#working-title").queryAs(Label.class).getText()).isNotBlank();
    push(KeyCode.ESCAPE);
    assertThat(lookup("#working-title").tryQuery()).isEmpty();
  }

  @Test
  void theQuickSumsOpenWithAKey() {
    push(KeyCode.CONTROL, KeyCode.K);
    assertThat(lookup("#sums-list").tryQuery()).isPresent();
    push(KeyCode.ESCAPE);
  }
}
