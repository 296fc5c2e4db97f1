package tankyard.app.map.tools;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.app.edit.Hand;
import tankyard.app.edit.Hand.InHand;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ThingKind;
import tankyard.app.example.SmallLease;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.Ghost;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Service;

class ToolsTest {
  private static final double FOOT = DrawnMap.FOOT;
  private final Lease first = SmallLease.lease();
  private final DrawnMap map = new DrawnMap(first);
  private final LeaseStore store = map.store;
  private final Selection selection = map.selection;
  private final Hand hand = map.hand;
  private final MapDesk desk = map.desk;

  private Pointer at(double eastFt, double northFt) {
    Camera camera = desk.camera();
    return Pointer.at(camera.x(eastFt * FOOT), camera.y(northFt * FOOT));
  }

  private Pointer shiftAt(double eastFt, double northFt) {
    Pointer plain = at(eastFt, northFt);
    return new Pointer(plain.x(), plain.y(), true, false, 1);
  }

  private static void click(Tool tool, Pointer pointer) {
    tool.move(pointer);
    tool.press(pointer);
    tool.release(pointer);
  }

  private static void drag(Tool tool, Pointer from, Pointer to) {
    tool.press(from);
    for (int i = 1; i <= 10; i++) {
      double share = i / 10.0;
      tool.drag(
          new Pointer(
              from.x() + share * (to.x() - from.x()),
              from.y() + share * (to.y() - from.y()),
              to.shift(),
              false,
              1));
    }
    tool.release(to);
  }

  private MapPoint placeOf(String id) {
    return store.lease().thing(id).orElseThrow().at();
  }

  private static void assertAt(MapPoint place, double eastFt, double northFt, double slackFt) {
    assertThat(place.east().toFeet()).isCloseTo(eastFt, within(slackFt));
    assertThat(place.north().toFeet()).isCloseTo(northFt, within(slackFt));
  }

  @Test
  void a_click_picks_and_a_click_on_the_ground_lets_go() {
    SelectTool tool = new SelectTool(desk);
    click(tool, at(100, 100));
    assertThat(selection.ids()).containsExactly("W1");
    click(tool, shiftAt(300, 80));
    assertThat(selection.ids()).containsExactly("W1", "W2");
    click(tool, at(100, 700));
    assertThat(selection.ids()).isEmpty();
  }

  @Test
  void a_drag_moves_to_round_feet_in_one_step() {
    drag(new SelectTool(desk), at(700, 420), at(803.3, 517.7));
    MapPoint place = placeOf("WT1");
    assertAt(place, 803.3, 517.7, 3);
    assertThat(place.east().typed().value() % 1).isEqualTo(0);
    store.undo();
    assertThat(store.lease()).isSameAs(first);
  }

  @Test
  void picked_things_move_together() {
    SelectTool tool = new SelectTool(desk);
    click(tool, at(100, 100));
    click(tool, shiftAt(300, 80));
    drag(tool, at(100, 100), at(150, 160));
    assertAt(placeOf("W1"), 150, 160, 3);
    assertThat(placeOf("W2").east().toFeet() - 300)
        .isCloseTo(placeOf("W1").east().toFeet() - 100, within(1e-6));
  }

  @Test
  void escape_puts_a_drag_back() {
    SelectTool tool = new SelectTool(desk);
    tool.press(at(100, 100));
    tool.drag(at(200, 200));
    assertThat(placeOf("W1")).isNotEqualTo(first.thing("W1").orElseThrow().at());
    assertThat(tool.giveUp()).isTrue();
    assertThat(store.lease()).isEqualTo(first);
    assertThat(store.undoNameProperty().get()).isEmpty();
  }

  @Test
  void a_shaky_click_moves_nothing() {
    Pointer press = at(100, 100);
    drag(new SelectTool(desk), press, new Pointer(press.x() + 2, press.y() - 2, false, false, 1));
    assertThat(store.lease()).isSameAs(first);
  }

  @Test
  void a_box_picks_what_lies_inside() {
    drag(new SelectTool(desk), at(50, 360), at(200, 40));
    assertThat(selection.ids()).contains("W1", "W3").doesNotContain("W2", "L1");
  }

  @Test
  void a_double_click_bends_a_line_and_the_corner_can_be_dragged() {
    SelectTool tool = new SelectTool(desk);
    Pointer on = at(350, 260);
    tool.press(new Pointer(on.x(), on.y(), false, false, 2));
    tool.release(on);
    assertThat(store.lease().line("L4").orElseThrow().route()).hasSize(1);
    drag(tool, at(350, 260), at(380, 200));
    assertAt(store.lease().line("L4").orElseThrow().route().get(0).at(), 380, 200, 3);
  }

  @Test
  void a_well_is_set_down_and_the_hand_is_empty_again() {
    hand.take(ThingKind.WELL);
    click(new PlaceTool(desk, ThingKind.WELL), at(60, 500));
    assertAt(placeOf("W4"), 60, 500, 3);
    assertThat(selection.ids()).containsExactly("W4");
    assertThat(hand.inHand()).isEqualTo(InHand.NOTHING);
  }

  @Test
  void shift_keeps_it_in_hand() {
    hand.take(ThingKind.WELL);
    click(new PlaceTool(desk, ThingKind.WELL), shiftAt(60, 500));
    assertThat(hand.inHand()).isEqualTo(InHand.WELL);
  }

  @Test
  void a_tee_let_go_on_a_line_cuts_it() {
    click(new PlaceTool(desk, ThingKind.TEE), at(600, 420));
    Line upstream = store.lease().line("L6").orElseThrow();
    assertThat(upstream.to()).isEqualTo("T2");
    assertThat(store.lease().lines()).hasSize(first.lines().size() + 1);
  }

  @Test
  void a_line_is_drawn_by_clicks_over_corners() {
    LineTool tool = new LineTool(desk);
    click(tool, at(920, 640));
    click(tool, at(800, 700));
    click(tool, at(700, 420));
    Line line = store.lease().line("L10").orElseThrow();
    assertThat(line.from()).isEqualTo("IW1");
    assertThat(line.to()).isEqualTo("WT1");
    assertThat(line.route()).hasSize(1);
    assertThat(selection.ids()).containsExactly("L10");
  }

  @Test
  void a_line_is_drawn_by_one_drag_and_knows_what_it_carries() {
    drag(new LineTool(desk), at(540, 300), at(740, 420));
    Line line = store.lease().line("L10").orElseThrow();
    assertThat(line.service()).isEqualTo(Service.OVERFLOW);
    assertThat(line.pipe()).isEqualTo("any-pipe");
  }

  @Test
  void a_line_ended_on_a_line_makes_a_tee_in_one_step() {
    LineTool tool = new LineTool(desk);
    click(tool, at(300, 80));
    click(tool, at(350, 260));
    Lease drawn = store.lease();
    assertThat(drawn.thing("T2")).isPresent();
    assertThat(drawn.lines()).hasSize(first.lines().size() + 2);
    store.undo();
    assertThat(store.lease()).isSameAs(first);
  }

  @Test
  void a_line_that_starts_nowhere_says_why_not() {
    click(new LineTool(desk), at(100, 700));
    assertThat(desk.refusalProperty().get()).startsWith("A line starts at a thing");
    assertThat(store.lease()).isSameAs(first);
  }

  @Test
  void backspace_takes_back_a_corner_and_escape_the_line() {
    LineTool tool = new LineTool(desk);
    click(tool, at(100, 100));
    click(tool, at(100, 500));
    tool.back();
    tool.move(at(200, 600));
    assertThat(desk.ghostProperty().get().spots()).hasSize(2);
    assertThat(tool.giveUp()).isTrue();
    assertThat(desk.ghostProperty().get()).isNull();
    assertThat(store.lease()).isSameAs(first);
  }

  @Test
  void the_tape_reads_length_and_bearing() {
    MeasureTool tool = new MeasureTool(desk);
    click(tool, at(100, 100));
    tool.move(at(300, 80));
    Ghost tape = desk.ghostProperty().get();
    assertThat(tape.words()).startsWith("201 ft").endsWith("bearing 96\u00b0");
  }

  @Test
  void arrows_nudge_and_a_run_of_them_is_one_step() {
    selection.select("W1");
    Nudge nudge = new Nudge(desk);
    nudge.by(1, 0);
    nudge.by(1, 0);
    nudge.by(0, 10);
    assertAt(placeOf("W1"), 102, 110, 1e-6);
    store.undo();
    assertThat(store.lease()).isSameAs(first);
  }

  @Test
  void everything_can_be_set_down_and_joined_by_keys_alone() {
    KeyPointer keys = new KeyPointer(desk);
    PlaceTool place = new PlaceTool(desk, ThingKind.WELL);
    keys.by(place, -5, 0, true);
    keys.press(place, false);
    assertThat(store.lease().thing("W4")).isPresent();
    keys.forget();
    LineTool line = new LineTool(desk);
    keys.press(line, false); // Starts at what is picked: the new well.
    keys.toNextThing(line, true);
    keys.press(line, false);
    assertThat(store.lease().line("L10").orElseThrow().from()).isEqualTo("W4");
  }
}
