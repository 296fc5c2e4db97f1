package tankyard.app.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.app.example.SmallLease;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Service;

class LeaseStoreTest {
  private final Lease first = SmallLease.lease();
  private final LeaseStore store = new LeaseStore(first);

  @Test
  void undo_and_redo_put_the_very_leases_back() {
    store.edit(new Rename("W1", "Smith 1"));
    store.edit(new Rename("W2", "Smith 2"));
    Lease second = store.lease();

    assertThat(store.undoNameProperty().get()).isEqualTo("Rename Well 2");
    store.undo();
    store.undo();
    assertThat(store.lease()).isSameAs(first);
    assertThat(store.undoNameProperty().get()).isEmpty();
    assertThat(store.redoNameProperty().get()).isEqualTo("Rename Well 1");

    store.redo();
    store.redo();
    assertThat(store.lease()).isSameAs(second);
  }

  @Test
  void a_new_edit_forgets_what_was_undone() {
    store.edit(new Rename("W1", "Smith 1"));
    store.undo();
    store.edit(new Rename("W2", "Smith 2"));
    store.redo();
    assertThat(store.lease().thing("W1").orElseThrow().name()).isEqualTo("Well 1");
  }

  @Test
  void the_moves_of_one_drag_are_one_step() {
    String drag = Gesture.start();
    for (int i = 1; i <= 50; i++) {
      store.edit(Move.of(List.of("T1"), i, 0).in(drag));
    }
    double startM = first.thing("T1").orElseThrow().at().east().metres();
    double endM = store.lease().thing("T1").orElseThrow().at().east().metres();
    assertThat(endM - startM).isCloseTo(50, org.assertj.core.data.Offset.offset(1e-6));
    store.undo();
    assertThat(store.lease()).isSameAs(first);
  }

  @Test
  void two_drags_are_two_steps() {
    store.edit(Move.of(List.of("T1"), 5, 0).in(Gesture.start()));
    Lease afterOne = store.lease();
    store.edit(Move.of(List.of("T1"), 5, 0).in(Gesture.start()));
    store.undo();
    assertThat(store.lease()).isSameAs(afterOne);
  }

  @Test
  void a_drag_back_to_where_it_began_leaves_no_step() {
    String drag = Gesture.start();
    store.edit(Move.of(List.of("W1"), 5, 0).in(drag));
    store.edit(Move.of(List.of("W1"), 0, 0).in(drag));
    assertThat(store.lease()).isEqualTo(first);
    assertThat(store.undoNameProperty().get()).isEmpty();
  }

  @Test
  void a_thousand_steps_can_be_undone() {
    for (int i = 0; i < 1000; i++) {
      store.edit(new Rename("W1", "name " + i));
    }
    for (int i = 0; i < 1000; i++) {
      store.undo();
    }
    assertThat(store.lease()).isSameAs(first);
  }

  @Test
  void revision_never_goes_back() {
    List<Long> seen = new ArrayList<>();
    store.leaseProperty().addListener((o, before, after) -> seen.add(store.revision()));
    store.edit(new Rename("W1", "a"));
    store.undo();
    store.redo();
    assertThat(seen).containsExactly(1L, 2L, 3L);
  }

  @Test
  void undoing_back_to_the_saved_lease_is_clean() {
    assertThat(store.isDirty()).isFalse();
    store.edit(new Rename("W1", "a"));
    assertThat(store.isDirty()).isTrue();
    store.undo();
    assertThat(store.isDirty()).isFalse();
  }

  @Test
  void a_save_of_an_older_lease_leaves_the_newer_one_unsaved() {
    store.edit(new Rename("W1", "a"));
    Lease written = store.lease();
    store.edit(new Rename("W1", "b"));
    store.saved(written);
    assertThat(store.isDirty()).isTrue();
    store.undo();
    assertThat(store.isDirty()).isFalse();
  }

  @Test
  void opening_another_lease_forgets_the_steps() {
    store.edit(new Rename("W1", "a"));
    store.open(SmallLease.bare());
    store.undo();
    assertThat(store.lease()).isEqualTo(SmallLease.bare());
    assertThat(store.isDirty()).isFalse();
  }

  @Test
  void a_lease_of_no_file_is_unsaved_from_the_start() {
    store.openUnsaved(SmallLease.bare());
    assertThat(store.isDirty()).isTrue();
  }

  @Test
  void an_edit_that_breaks_the_lease_is_refused_and_changes_nothing() {
    Edit broken =
        Change.of("break", l -> l.with(SmallLease.line("L99", Service.FLOW_LINE, "W1", "nowhere")));
    assertThatThrownBy(() -> store.edit(broken))
        .isInstanceOf(EditRefusedException.class)
        .hasMessageContaining("nowhere");
    assertThat(store.lease()).isSameAs(first);
    assertThat(store.undoNameProperty().get()).isEmpty();
  }

  @Test
  void a_picked_thing_that_is_deleted_drops_out_of_the_selection() {
    Selection selection = new Selection(store);
    selection.select(List.of("W1", "L1", "W2"));
    store.edit(Delete.of(List.of("W1")));
    assertThat(selection.ids()).containsExactly("W2");
    assertThat(selection.single()).isEqualTo(Optional.of("W2"));
  }

  @Test
  void the_shown_case_is_always_one_of_the_lease() {
    ViewSettings view = new ViewSettings(store);
    view.caseIdProperty().set("winter");
    store.edit(Change.of("one case", l -> l.withCases(l.cases().subList(0, 1))));
    assertThat(view.caseId()).isEqualTo("summer");
  }
}
