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

  /** What stood in the file when it was last read or written here. */
  private Optional<Lease> lastSeen = Optional.empty();

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
    home(null, Optional.empty());
    store.open(taken);
    return true;
  }

  /** Takes up a lease left over from a program that ended without saving. */
  void takeUnsaved(Lease lease, Optional<Path> home) {
    home(home.orElse(null), home.flatMap(LeaseDesk::standing));
    store.openUnsaved(lease);
  }

  private static Optional<Lease> standing(Path path) {
    try {
      return Optional.of(LeaseFiles.read(path));
    } catch (LeaseFileException e) {
      return Optional.empty(); // Gone or unreadable: a save writes it anew or keeps it aside.
    }
  }

  private void home(Path path, Optional<Lease> standing) {
    file.set(path);
    lastSeen = standing;
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
      home(path, Optional.of(lease));
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
    return file.get() == null ? saveAs() : write(file.get(), lastSeen);
  }

  public boolean saveAs() {
    String name = store.lease().name().strip().replaceAll("[^\\p{L}\\p{N}]+", "-");
    String suggested =
        (name.isEmpty() ? "lease" : name.toLowerCase(Locale.ROOT)) + LeaseFiles.EXTENSION;
    return picker
        .toSave(suggested, LeaseFiles.EXTENSION, "Lease files")
        .map(path -> write(path, Optional.empty()))
        .orElse(false);
  }

  /**
   * Saves it there.
   *
   * @param expected what should stand there; empty where whatever does may go
   */
  private boolean write(Path path, Optional<Lease> expected) {
    Lease lease = store.lease();
    try {
      SavedFile saved = LeaseFiles.save(lease, path, expected);
      home(path, Optional.of(lease));
      recent.add(path);
      store.saved(lease);
      say("Saved to " + path);
      saved.keptAside().ifPresent(this::tell);
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

  private void tell(SavedFile.Kept kept) {
    String why =
        switch (kept.why()) {
          case UNREADABLE -> "It could not be read as a lease, so it was not written over.";
          case CHANGED -> "Somebody else changed it since it was last opened or saved here.";
        };
    dialogs.tell(
        "The file that stood there is kept",
        why + " It is now " + kept.file().getFileName() + " in the same folder.");
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
