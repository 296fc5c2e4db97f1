package tankyard.app.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.app.edit.LeaseStore;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.LeaseFileException;
import tankyard.engine.leasefile.LeaseFiles;

/**
 * Keeps a copy of what is not saved, so that a power cut costs seconds of work and not a day. The
 * copy bears the number of the running program: a second window leaves the first one's copy alone.
 */
public final class Recovery {
  private static final System.Logger LOG = System.getLogger(Recovery.class.getName());
  private static final String HOME_ENDING = ".home";

  private final Path folder;
  private final LeaseStore store;
  private final LeaseDesk desk;
  private final Dialogs dialogs;
  private final Path copy;
  private Lease kept;

  public Recovery(Path folder, LeaseStore store, LeaseDesk desk, Dialogs dialogs) {
    this(folder, store, desk, dialogs, ProcessHandle.current().pid());
  }

  Recovery(Path folder, LeaseStore store, LeaseDesk desk, Dialogs dialogs, long program) {
    this.folder = folder;
    this.store = store;
    this.desk = desk;
    this.dialogs = dialogs;
    this.copy = folder.resolve("unsaved-" + program + LeaseFiles.EXTENSION);
  }

  /** Writes the copy if there is something new in it; called now and then. */
  public void keep() {
    if (!store.isDirty()) {
      forget();
      return;
    }
    if (store.lease().equals(kept)) {
      return;
    }
    try {
      Files.createDirectories(folder);
      Path home = desk.fileProperty().get();
      Files.writeString(homeOf(copy), home == null ? "" : home.toString(), StandardCharsets.UTF_8);
      LeaseFiles.save(store.lease(), copy);
      kept = store.lease();
    } catch (IOException e) {
      LOG.log(System.Logger.Level.WARNING, "No copy of the unsaved lease could be kept", e);
    }
  }

  /** Drops the copy: the work is saved, or its owner let it go. */
  public void forget() {
    kept = null;
    drop(copy);
  }

  /** Offers what an earlier program left behind; true if it was taken up. */
  public boolean offer() {
    for (Path left : leftBehind()) {
      Optional<Lease> lease = read(left);
      if (lease.isPresent()) {
        boolean wanted =
            dialogs.ask(
                "Take up unsaved work?",
                "\""
                    + lease.get().name()
                    + "\" was not saved when the program last ended. If you leave it, it is gone.",
                "Take it up");
        if (wanted) {
          desk.takeUnsaved(lease.get(), home(left));
          keep(); // Its own copy first, then the old one goes.
        }
        drop(left);
        if (wanted) {
          return true;
        }
      }
    }
    return false;
  }

  private List<Path> leftBehind() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(Recovery::isLeftBehind).sorted().toList();
    } catch (IOException e) {
      LOG.log(System.Logger.Level.WARNING, folder + " can't be listed", e);
      return List.of();
    }
  }

  private static boolean isLeftBehind(Path file) {
    String name = file.getFileName().toString();
    if (!name.matches("unsaved-\\d+" + LeaseFiles.EXTENSION.replace(".", "\\."))) {
      return false;
    }
    long program = Long.parseLong(name.replaceAll("\\D", ""));
    return ProcessHandle.of(program).filter(ProcessHandle::isAlive).isEmpty();
  }

  private static Optional<Lease> read(Path file) {
    try {
      return Optional.of(LeaseFiles.read(file));
    } catch (LeaseFileException e) {
      LOG.log(System.Logger.Level.WARNING, "A kept copy can't be read and is left where it is", e);
      return Optional.empty();
    }
  }

  private static Path homeOf(Path copy) {
    return copy.resolveSibling(copy.getFileName() + HOME_ENDING);
  }

  private static Optional<Path> home(Path copy) {
    try {
      String text = Files.readString(homeOf(copy), StandardCharsets.UTF_8).strip();
      return text.isEmpty() ? Optional.empty() : Optional.of(Path.of(text));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static void drop(Path copy) {
    try {
      Files.deleteIfExists(copy);
      Files.deleteIfExists(homeOf(copy));
    } catch (IOException e) {
      LOG.log(System.Logger.Level.WARNING, copy + " can't be removed", e);
    }
  }
}
