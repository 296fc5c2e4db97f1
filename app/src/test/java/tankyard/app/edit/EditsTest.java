package tankyard.app.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tankyard.app.example.SmallLease.at;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.app.example.SmallLease;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.SpotHeight;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Thing;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Length;

class EditsTest {
  private static final double FOOT = 0.3048;
  private final Lease lease = SmallLease.lease();

  private static MapPoint placeOf(Lease lease, String id) {
    return lease.thing(id).orElseThrow().at();
  }

  @Test
  void a_typed_ground_height_stays_at_the_place_it_was_shot() {
    Lease moved = Move.of(List.of("W1"), 50 * FOOT, 0).apply(lease);
    assertThat(moved.thing("W1").orElseThrow().ground()).isEmpty();
    assertThat(placeOf(moved, "W1")).isEqualTo(at(150, 100));
    assertThat(moved.spotHeights())
        .contains(new SpotHeight(at(100, 100), Elevation.ofFeet(1001)))
        .hasSize(lease.spotHeights().size() + 1);
  }

  @Test
  void a_measured_length_goes_when_one_end_moves() {
    Lease measured = withLength("L4");
    assertThat(Move.of(List.of("S1"), 3, 0).apply(measured).line("L4").orElseThrow().length())
        .isEmpty();
  }

  @Test
  void a_measured_length_stays_when_the_whole_line_moves() {
    Lease measured = withLength("L4");
    assertThat(Move.of(List.of("S1", "T1"), 3, 0).apply(measured).line("L4").orElseThrow().length())
        .contains(Length.ofFeet(250));
  }

  @Test
  void corners_go_along_only_when_both_ends_move() {
    Lease both = Move.of(List.of("S1", "WT1"), 10 * FOOT, 20 * FOOT).apply(lease);
    assertThat(both.line("L6").orElseThrow().route().get(0).at()).isEqualTo(at(510, 440));
    Lease one = Move.of(List.of("WT1"), 10 * FOOT, 20 * FOOT).apply(lease);
    assertThat(one.line("L6").orElseThrow().route().get(0).at()).isEqualTo(at(500, 420));
  }

  @Test
  void a_move_by_nothing_changes_nothing() {
    assertThat(Move.of(List.of("W1", "L6", "S1"), 0, 0).apply(lease)).isEqualTo(lease);
  }

  @Test
  void deleting_a_thing_takes_its_lines_and_says_so() {
    Delete delete = Delete.of(List.of("T1"));
    assertThat(delete.name(lease)).isEqualTo("Delete Tee 1 and 4 lines");
    assertThat(delete.apply(lease).lines()).extracting(Line::id).doesNotContain("L1", "L4");
  }

  @Test
  void a_tee_dropped_on_a_line_cuts_it_between_its_corners() {
    Tee tee = new Tee("T2", "Tee 2", at(600, 420), Optional.empty(), Status.NEW);
    Lease split = new SplitLine("L6", 1, tee).apply(lease);
    Line upstream = split.line("L6").orElseThrow();
    Line downstream = split.line("L10").orElseThrow();
    assertThat(List.of(upstream.from(), upstream.to())).containsExactly("S1", "T2");
    assertThat(upstream.route()).hasSize(1);
    assertThat(List.of(downstream.from(), downstream.to())).containsExactly("T2", "WT1");
    assertThat(downstream.route()).isEmpty();
    assertThat(downstream.service()).isEqualTo(Service.WATER_LEG);
    assertThat(downstream.name()).isEqualTo("Water leg 1");
  }

  @Test
  void a_line_cannot_end_where_it_starts() {
    Connect loop = new Connect(SmallLease.line("L50", Service.FLOW_LINE, "W1", "W1"));
    assertThatThrownBy(() -> loop.apply(lease))
        .isInstanceOf(EditRefusedException.class)
        .hasMessage("A line can't start and end at Well 1: end it at another thing.");
  }

  @Test
  void an_empty_name_is_refused() {
    assertThatThrownBy(() -> new Rename("W1", "  ").apply(lease))
        .isInstanceOf(EditRefusedException.class)
        .hasMessageContaining("Well 1 needs a name");
  }

  @Test
  void copies_get_ids_and_names_of_their_own_and_keep_the_lines_between_them() {
    Duplicate copy = Duplicate.of(lease, List.of("S1", "WT1", "W1"), 10 * FOOT, 0);
    assertThat(copy.newIds(lease)).containsExactly("W4", "S2", "WT2");
    Lease after = copy.apply(lease);
    assertThat(after.thing("WT2").orElseThrow().name()).isEqualTo("Water tank 2");
    assertThat(after.thing("W4").orElseThrow().ground()).isEmpty();
    Line leg = after.line("L10").orElseThrow();
    assertThat(leg.touches("S2") && leg.touches("WT2")).isTrue();
    assertThat(leg.route()).containsExactly(RoutePoint.at(at(510, 420)));
    assertThat(after.lines()).hasSize(lease.lines().size() + 1);
  }

  @Test
  void ids_go_on_from_the_highest_number_in_use() {
    assertThat(Naming.nextId(lease, "W")).isEqualTo("W4");
    assertThat(Naming.nextId(lease, "WT")).isEqualTo("WT2");
    assertThat(Naming.nextId(lease, "T")).isEqualTo("T2");
  }

  @Test
  void a_corner_is_added_moved_and_removed() {
    Lease bent = new AddCorner("L4", 0, at(300, 250), Optional.empty()).apply(lease);
    assertThat(bent.line("L4").orElseThrow().route()).hasSize(1);
    Lease dragged = new DragCorner("L4", 0, at(320, 260), Optional.empty()).apply(bent);
    assertThat(dragged.line("L4").orElseThrow().route().get(0).at()).isEqualTo(at(320, 260));
    assertThat(new RemoveCorner("L4", 0).apply(dragged)).isEqualTo(lease);
  }

  @Test
  void things_line_up_with_the_first() {
    Lease row = new Align(List.of("W1", "W2", "W3"), Align.Along.ROW).apply(lease);
    assertThat(row.wells()).allMatch(w -> w.at().north().toFeet() == 100);
  }

  @Test
  void status_is_set_on_things_and_lines_alike() {
    Lease gone = SetStatus.of(List.of("W1", "L1"), Status.REMOVE).apply(lease);
    assertThat(gone.thing("W1").map(Thing::status)).contains(Status.REMOVE);
    assertThat(gone.line("L1").map(Line::status)).contains(Status.REMOVE);
  }

  private Lease withLength(String lineId) {
    Line line = lease.line(lineId).orElseThrow();
    return lease.with(line.withLength(Optional.of(Length.ofFeet(250))));
  }
}
