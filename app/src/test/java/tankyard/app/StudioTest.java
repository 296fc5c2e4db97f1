package tankyard.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import javafx.geometry.Point2D;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;
import tankyard.app.edit.Hand.InHand;
import tankyard.app.example.SmallLease;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;

/** The whole window, worked with mouse and keys only. */
class StudioTest extends StudioFixture {
  @Test
  void a_dragged_tank_stands_elsewhere_and_undo_takes_it_back() {
    Lease before = lease();
    dragTo(thing("WT1"), onScreen(760, 520));
    assertThat(placeOf("WT1").east().toFeet()).isCloseTo(760, within(5.0));
    assertThat(placeOf("WT1").north().toFeet()).isCloseTo(520, within(5.0));
    push(KeyCode.CONTROL, KeyCode.Z);
    assertThat(lease()).isEqualTo(before);
    push(KeyCode.CONTROL, KeyCode.Y);
    assertThat(placeOf("WT1")).isNotEqualTo(before.thing("WT1").orElseThrow().at());
  }

  @Test
  void a_well_is_clicked_on_the_rack_and_then_on_the_map() {
    clickOn("#rack-well");
    clickOn(onScreen(200, 560));
    assertThat(placeOf("W4").east().toFeet()).isCloseTo(200, within(5.0));
    assertThat(studio.hand().inHand()).isEqualTo(InHand.NOTHING);
  }

  @Test
  void a_well_is_dragged_from_the_rack_onto_the_map() {
    Point2D rack = point("#rack-well").query();
    dragTo(rack, onScreen(300, 600));
    assertThat(placeOf("W4").north().toFeet()).isCloseTo(600, within(5.0));
    assertThat(studio.hand().inHand()).isEqualTo(InHand.NOTHING);
  }

  @Test
  void a_thing_let_go_off_the_map_is_put_back() {
    Point2D rack = point("#rack-well").query();
    dragTo(rack, rack.add(4, 160));
    assertThat(lease().wells()).hasSize(3);
    assertThat(studio.hand().inHand()).isEqualTo(InHand.NOTHING);
  }

  @Test
  void a_line_is_drawn_from_thing_to_thing() {
    clickOn("#rack-line");
    clickOn(thing("W2"));
    clickOn(onScreen(430, 150));
    clickOn(thing("S1"));
    Line line = lease().line("L10").orElseThrow();
    assertThat(line.from()).isEqualTo("W2");
    assertThat(line.to()).isEqualTo("S1");
    assertThat(line.route()).hasSize(1);
  }

  @Test
  void f2_renames_in_place() {
    clickOn(thing("T1"));
    push(KeyCode.F2);
    TextField field = lookup("#map-in-place").queryAs(TextField.class);
    assertThat(field.isVisible()).isTrue();
    write("Hill tee").push(KeyCode.ENTER);
    assertThat(lease().thing("T1").orElseThrow().name()).isEqualTo("Hill tee");
    assertThat(field.isVisible()).isFalse();
    assertThat(studio.mapPane().view().isFocused()).isTrue();
  }

  @Test
  void an_empty_name_is_kept_in_the_field_with_the_reason() {
    clickOn(thing("T1"));
    push(KeyCode.F2);
    push(KeyCode.BACK_SPACE).push(KeyCode.ENTER);
    assertThat(lookup("#map-in-place").queryAs(TextField.class).isVisible()).isTrue();
    assertThat(lookup("#status-hint").queryLabeled().getText()).contains("needs a name");
    push(KeyCode.ESCAPE);
    assertThat(lease().thing("T1").orElseThrow().name()).isEqualTo("Tee 1");
  }

  @Test
  void a_box_picks_and_delete_deletes() {
    dragTo(onScreen(40, 360), onScreen(270, 50));
    assertThat(studio.map().desk().selection().ids()).contains("W1", "W3", "T1");
    push(KeyCode.DELETE);
    assertThat(lease().thing("T1")).isEmpty();
    assertThat(lease().thing("W2")).isPresent();
    push(KeyCode.CONTROL, KeyCode.Z);
    assertThat(lease()).isEqualTo(SmallLease.lease());
  }

  @Test
  void arrows_nudge_what_is_picked_and_tab_steps_on() {
    clickOn(thing("W1"));
    push(KeyCode.RIGHT).push(KeyCode.RIGHT).push(KeyCode.SHIFT, KeyCode.UP);
    assertThat(placeOf("W1")).isEqualTo(SmallLease.at(102, 110));
    push(KeyCode.TAB);
    assertThat(studio.map().desk().selection().ids()).containsExactly("W2");
    push(KeyCode.SHIFT, KeyCode.TAB);
    assertThat(studio.map().desk().selection().ids()).containsExactly("W1");
    push(KeyCode.ESCAPE);
    assertThat(studio.map().desk().selection().isEmpty()).isTrue();
  }

  @Test
  void a_well_is_set_down_and_joined_with_keys_only() {
    push(KeyCode.ALT, KeyCode.DIGIT1);
    assertThat(studio.hand().inHand()).isEqualTo(InHand.WELL);
    push(KeyCode.SHIFT, KeyCode.LEFT).push(KeyCode.ENTER);
    assertThat(lease().wells()).hasSize(4);
    push(KeyCode.CONTROL, KeyCode.L);
    push(KeyCode.ENTER).push(KeyCode.TAB).push(KeyCode.TAB).push(KeyCode.ENTER);
    assertThat(lease().line("L10").orElseThrow().from()).isEqualTo("W4");
  }

  @Test
  void the_right_button_opens_the_menu_of_the_thing_below_it() {
    rightClickOn(thing("W3"));
    clickOn("#menu-duplicate");
    assertThat(lease().wells()).hasSize(4);
    assertThat(studio.map().desk().selection().ids()).containsExactly("W4");
  }

  @Test
  void the_menu_key_opens_the_same_menu() {
    clickOn(thing("W3"));
    push(KeyCode.CONTEXT_MENU);
    clickOn("#menu-delete");
    assertThat(lease().thing("W3")).isEmpty();
  }

  @Test
  void the_wheel_zooms_at_the_pointer() {
    Point2D tank = thing("WT1");
    double scale = studio.map().desk().camera().pxPerM();
    moveTo(tank).scroll(-3);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(studio.map().desk().camera().pxPerM()).isNotEqualTo(scale);
    assertThat(thing("WT1").distance(tank)).isLessThan(2);
  }
}
