package tankyard.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyCode;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tankyard.app.files.Dialogs;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.style.Shade;
import tankyard.engine.units.UnitSystem;

/** What belongs to the window as a whole: its bars, its questions and its parts. */
class StudioWindowTest extends StudioFixture {
  @Test
  void the_status_bar_says_where_the_pointer_is() {
    moveTo(thing("W1"));
    assertThat(lookup("#status-cursor").queryLabeled().getText())
        .startsWith("E ")
        .contains("ground 1001 ft");
  }

  @Test
  void units_and_shade_change_in_one_place() {
    clickOn("#units-metric");
    assertThat(studio.view().units()).isEqualTo(UnitSystem.METRIC);
    clickOn("#shade");
    assertThat(look.shade()).isEqualTo(Shade.DARK);
  }

  @Test
  void unsaved_changes_are_asked_about_before_another_lease_is_taken_up() {
    clickOn(thing("W1"));
    push(KeyCode.RIGHT);
    dialogs.answerUnsaved(Dialogs.Unsaved.STAY);
    push(KeyCode.CONTROL, KeyCode.N);
    assertThat(dialogs.asked()).containsExactly("unsaved Small lease");
    assertThat(lease().wells()).hasSize(3);
    dialogs.answerUnsaved(Dialogs.Unsaved.DROP);
    push(KeyCode.CONTROL, KeyCode.N);
    assertThat(lease().wells()).isEmpty();
  }

  @Test
  void a_window_with_unsaved_changes_asks_before_it_closes() {
    clickOn(thing("W1"));
    push(KeyCode.RIGHT);
    dialogs.answerUnsaved(Dialogs.Unsaved.STAY);
    push(KeyCode.CONTROL, KeyCode.Q);
    assertThat(dialogs.asked()).containsExactly("unsaved Small lease");
    assertThat(stage.isShowing()).isTrue();
    dialogs.answerUnsaved(Dialogs.Unsaved.DROP);
    push(KeyCode.CONTROL, KeyCode.Q);
    assertThat(left).isTrue();
    assertThat(stage.isShowing()).isFalse();
  }

  @Test
  void the_map_is_written_as_a_picture(@TempDir Path folder) throws IOException {
    picker.pick(folder.resolve("map.png"));
    clickOn("#menu-file").clickOn("#menu-picture");
    BufferedImage picture = ImageIO.read(folder.resolve("map.png").toFile());
    Camera camera = studio.map().desk().camera();
    assertThat(picture.getWidth()).isEqualTo((int) Math.round(2 * camera.widthPx()));
    assertThat(picture.getHeight()).isEqualTo((int) Math.round(2 * camera.heightPx()));
    int x = (int) Math.round(2 * camera.x(MapSpot.of(placeOf("W1"))));
    int y = (int) Math.round(2 * camera.y(MapSpot.of(placeOf("W1"))));
    assertThat(picture.getRGB(x, y) & 0xffffff).as("the well's dot").isEqualTo(0x1d252c);
  }

  @Test
  void a_thing_revealed_from_elsewhere_comes_into_view() {
    interact(
        () -> {
          studio.map().sight().zoomAt(10, 10, 30);
          studio.map().desk().selection().reveal("IW1");
        });
    Point2D at = studio.mapPane().view().screenToLocal(thing("IW1"));
    assertThat(studio.mapPane().view().contains(at)).isTrue();
  }

  @Test
  void f6_moves_from_part_to_part() {
    assertThat(studio.mapPane().view().isFocused()).isTrue();
    push(KeyCode.SHIFT, KeyCode.F6);
    assertThat(lookup("#rack-well").query().isFocused()).isTrue();
    push(KeyCode.F6);
    assertThat(studio.mapPane().view().isFocused()).isTrue();
  }
}
