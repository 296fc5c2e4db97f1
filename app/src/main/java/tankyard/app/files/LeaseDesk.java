package tankyard.app.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tankyard.app.edit.LeaseStore;
import tankyard.app.memory.Memory;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.LeaseFileException;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.leasefile.Problem;
import tankyard.engine.leasefile.SavedFile;

/** Opens and saves the lease, and lets no change be lost without asking. */
public final class LeaseDesk {
  private final LeaseStore store;
  private final Dialogs dialogs;
  private final FilePicker picker;
  private final Recent recent;
  private final ReadOnlyStringWrapper notice = new ReadOnlyStringWrapper(this, "notice", "");
  private final ReadOnlyObjectWrapper<Path> file = new ReadOnlyObjectWrapper<>(this, "file");

  public LeaseDesk(LeaseStore store, Dialogs dialogs, FilePicker picker, Memory memory) {
    this.store = store;
    this.dialogs = dialogs;
    this.picker = picker;
    this.recent = new Recent(memory);
  }

  /** Where the lease lies; null while it has no file. */
  public ReadOnlyObjectProperty<Path> fileProperty() {
    return file.getReadOnlyProperty();
  }

  /** What was done last, for the status bar: "Saved to ...". */
  public ReadOnlyStringProperty noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  private void say(String words) {
    notice.set("");
    notice.set(words);
  }

  public Recent recent() {
    return recent;
  }

  /** Takes up a lease that has no file of its own, such as a new one or the demo. */
  public boolean take(Supplier<Lease> lease) {
    if (!mayLeave()) {
      return false;
    }
    Lease taken = lease.get();
    file.set(null);
    store.open(taken);
    return true;
  }

  /** Takes up a lease left over from a program that ended without saving. */
  void takeUnsaved(Lease lease, Optional<Path> home) {
    file.set(home.orElse(null));
    store.openUnsaved(lease);
  }

  public boolean open() {
    return mayLeave() && picker.toOpen().map(this::read).orElse(false);
  }

  public boolean open(Path path) {
    return mayLeave() && read(path);
  }

  /** A file that can't be read changes nothing: the lease on the screen stays. */
  private boolean read(Path path) {
    try {
      Lease lease = LeaseFiles.read(path);
      file.set(path);
      recent.add(path);
      store.open(lease);
      say("Opened " + path);
      return true;
    } catch (LeaseFileException e) {
      if (!Files.exists(path)) {
        recent.drop(path);
      }
      dialogs.tell("This file can't be opened", words(e));
      return false;
    }
  }

  public boolean save() {
    return file.get() == null ? saveAs() : write(file.get());
  }

  public boolean saveAs() {
    String name = store.lease().name().strip().replaceAll("[^\\p{L}\\p{N}]+", "-");
    String suggested =
        (name.isEmpty() ? "lease" : name.toLowerCase(Locale.ROOT)) + LeaseFiles.EXTENSION;
    return picker
        .toSave(suggested, LeaseFiles.EXTENSION, "Lease files")
        .map(this::write)
        .orElse(false);
  }

  private boolean write(Path path) {
    Lease lease = store.lease();
    try {
      SavedFile saved = LeaseFiles.save(lease, path);
      file.set(path);
      recent.add(path);
      store.saved(lease);
      say("Saved to " + path);
      saved
          .keptAside()
          .ifPresent(
              kept ->
                  dialogs.tell(
                      "The file that stood there is kept",
                      "It could not be read as a lease, so it was not written over. It is now "
                          + kept.getFileName()
                          + " in the same folder."));
      return true;
    } catch (LeaseFileException e) {
      dialogs.tell("This lease can't be saved", words(e));
    } catch (IOException e) {
      dialogs.tell(
          "Not saved",
          path + " could not be written: " + e.getMessage() + ". Save it to another folder.");
    }
    return false;
  }

  private static String words(LeaseFileException e) {
    Problem first = e.problems().get(0);
    String where = first.place().isEmpty() ? "" : "\nAt " + first.place();
    String line =
        first.position().map(p -> ", line " + p.line() + " column " + p.column()).orElse("");
    String more = e.problems().size() > 1 ? "\n\nand " + (e.problems().size() - 1) + " more." : "";
    return first.file()
        + where
        + line
        + "\n\nFound: "
        + first.found()
        + "\nAccepted: "
        + first.accepted()
        + more;
  }

  /** Whether the lease on the screen may go: it is saved, or its owner says so. */
  public boolean mayLeave() {
    if (!store.isDirty()) {
      return true;
    }
    return switch (dialogs.askUnsaved(store.lease().name())) {
      case SAVE -> save();
      case DROP -> true;
      case STAY -> false;
    };
  }

  /** Writes something else that a file is asked for: a picture, a list. */
  public void export(String suggested, String ending, String what, Writing writing) {
    picker
        .toSave(suggested, ending, what)
        .ifPresent(
            path -> {
              try {
                writing.to(path);
                say("Written to " + path);
              } catch (IOException e) {
                dialogs.tell(
                    "Not written", path + " could not be written: " + e.getMessage() + ".");
              }
            });
  }

  /** Writes a file. */
  @FunctionalInterface
  public interface Writing {
    void to(Path file) throws IOException;
  }
}
