package tankyard.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.Rename;
import tankyard.app.example.SmallLease;
import tankyard.app.example.TestDialogs;
import tankyard.app.example.TestPicker;
import tankyard.app.memory.Memory;
import tankyard.engine.leasefile.LeaseFiles;

class LeaseDeskTest {
  @TempDir Path folder;
  private final LeaseStore store = new LeaseStore(SmallLease.lease());
  private final TestDialogs dialogs = new TestDialogs();
  private final TestPicker picker = new TestPicker();
  private final Memory memory = Memory.forgetful();
  private final LeaseDesk desk = new LeaseDesk(store, dialogs, picker, memory);

  private void change() {
    store.edit(new Rename("W1", "Smith 1"));
  }

  @Test
  void a_saved_lease_is_read_back_the_same() {
    Path file = folder.resolve("a.lease.json");
    picker.pick(file);
    change();
    assertThat(desk.save()).isTrue();
    assertThat(store.isDirty()).isFalse();
    var saved = store.lease();
    desk.take(SmallLease::bare);
    assertThat(desk.open(file)).isTrue();
    assertThat(store.lease()).isEqualTo(saved);
    assertThat(desk.recent().files()).containsExactly(file);
  }

  @Test
  void unsaved_changes_are_asked_about_and_may_stay() {
    change();
    dialogs.answerUnsaved(Dialogs.Unsaved.STAY);
    assertThat(desk.take(SmallLease::bare)).isFalse();
    assertThat(dialogs.asked()).containsExactly("unsaved Small lease");
    assertThat(store.lease().thing("W1").orElseThrow().name()).isEqualTo("Smith 1");
  }

  @Test
  void dropped_changes_are_gone_and_saved_ones_are_in_the_file() {
    change();
    dialogs.answerUnsaved(Dialogs.Unsaved.DROP);
    assertThat(desk.mayLeave()).isTrue();
    dialogs.answerUnsaved(Dialogs.Unsaved.SAVE);
    picker.pick(folder.resolve("b.lease.json"));
    assertThat(desk.mayLeave()).isTrue();
    assertThat(folder.resolve("b.lease.json")).exists();
  }

  @Test
  void a_save_that_is_called_off_keeps_the_window_open() {
    change();
    dialogs.answerUnsaved(Dialogs.Unsaved.SAVE);
    picker.cancel();
    assertThat(desk.mayLeave()).isFalse();
  }

  @Test
  void a_file_that_cannot_be_read_is_shown_and_changes_nothing() throws IOException {
    Path broken = folder.resolve("broken.lease.json");
    Files.writeString(broken, "{ \"format\": ");
    var before = store.lease();
    assertThat(desk.open(broken)).isFalse();
    assertThat(store.lease()).isSameAs(before);
    assertThat(dialogs.asked()).hasSize(1);
    assertThat(dialogs.asked().get(0))
        .startsWith("This file can't be opened")
        .contains("broken.lease.json")
        .contains("Found: ")
        .contains("Accepted: ");
    assertThat(Files.readString(broken)).isEqualTo("{ \"format\": ");
  }

  @Test
  void saving_over_a_file_that_cannot_be_read_keeps_it_beside() throws IOException {
    Path broken = folder.resolve("broken.lease.json");
    Files.writeString(broken, "somebody's letter");
    picker.pick(broken);
    assertThat(desk.saveAs()).isTrue();
    assertThat(dialogs.asked().get(0)).startsWith("The file that stood there is kept");
    try (var files = Files.list(folder)) {
      List<String> texts = files.filter(f -> !f.equals(broken)).map(LeaseDeskTest::text).toList();
      assertThat(texts).containsExactly("somebody's letter");
    }
  }

  @Test
  void what_somebody_else_wrote_meanwhile_is_kept_beside() throws Exception {
    Path file = folder.resolve("shared.lease.json");
    picker.pick(file);
    desk.save();
    LeaseFiles.save(SmallLease.bare().withName("Theirs"), file);
    change();
    assertThat(desk.save()).isTrue();
    assertThat(dialogs.asked()).hasSize(1);
    assertThat(dialogs.asked().get(0))
        .startsWith("The file that stood there is kept")
        .contains("Somebody else changed it")
        .contains("shared.lease.json~");
    assertThat(LeaseFiles.read(folder.resolve("shared.lease.json~")).name()).isEqualTo("Theirs");
    assertThat(LeaseFiles.read(file)).isEqualTo(store.lease());
  }

  @Test
  void saving_again_and_again_keeps_nothing_beside() throws IOException {
    picker.pick(folder.resolve("mine.lease.json"));
    desk.save();
    change();
    desk.save();
    desk.open(folder.resolve("mine.lease.json"));
    store.edit(new Rename("W1", "Smith 2"));
    desk.save();
    assertThat(dialogs.asked()).isEmpty();
    try (var files = Files.list(folder)) {
      assertThat(files).hasSize(1);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void a_recent_file_that_is_gone_drops_off_the_list() {
    picker.pick(folder.resolve("c.lease.json"));
    desk.save();
    Path gone = folder.resolve("gone.lease.json");
    desk.recent().add(gone);
    desk.open(gone);
    assertThat(desk.recent().files()).containsExactly(folder.resolve("c.lease.json"));
  }

  @Test
  void recent_files_are_remembered() {
    picker.pick(folder.resolve("c.lease.json"));
    desk.save();
    assertThat(new LeaseDesk(store, dialogs, picker, memory).recent().files())
        .containsExactly(folder.resolve("c.lease.json"));
  }

  @Test
  void unsaved_work_of_a_program_that_died_is_offered_again() {
    long noSuchProgram = 99_999_999_999L;
    change();
    new Recovery(folder, store, desk, dialogs, noSuchProgram).keep();
    var unsaved = store.lease();

    LeaseStore next = new LeaseStore(SmallLease.bare());
    LeaseDesk nextDesk = new LeaseDesk(next, dialogs, picker, memory);
    dialogs.answer(true);
    Recovery recovery = new Recovery(folder, next, nextDesk, dialogs);
    assertThat(recovery.offer()).isTrue();
    assertThat(next.lease()).isEqualTo(unsaved);
    assertThat(next.isDirty()).isTrue();
    assertThat(recovery.offer()).isFalse();
  }

  @Test
  void a_window_that_still_runs_keeps_its_copy_to_itself() {
    change();
    Recovery running = new Recovery(folder, store, desk, dialogs);
    running.keep();
    assertThat(new Recovery(folder, store, desk, dialogs, 1_234_567_890L).offer()).isFalse();
    running.forget();
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void saved_work_leaves_no_copy() {
    picker.pick(folder.resolve("d.lease.json"));
    Path copies = folder.resolve("copies");
    Recovery recovery = new Recovery(copies, store, desk, dialogs);
    change();
    recovery.keep();
    assertThat(copies).isNotEmptyDirectory();
    desk.save();
    recovery.keep();
    assertThat(copies).isEmptyDirectory();
    assertThat(LeaseFiles.problems("d", store.lease())).isEmpty();
  }
}
