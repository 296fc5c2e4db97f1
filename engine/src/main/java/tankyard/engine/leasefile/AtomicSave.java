package tankyard.engine.leasefile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.SavedFile.Kept;
import tankyard.engine.leasefile.SavedFile.Why;

/**
 * Puts a whole new file in the place of the old one in one step, so that whoever looks, at whatever
 * moment, finds the old lease or the new one. What stood there and was no readable lease, or not
 * the one that was last seen, is kept beside it.
 */
final class AtomicSave {
  private static final String SUFFIX = ".saving";
  private static final Duration SURELY_ABANDONED = Duration.ofHours(1);

  private final Path target;

  private AtomicSave(Path target) {
    this.target = target;
  }

  static SavedFile save(byte[] bytes, Path file, Optional<Lease> lastSeen) throws IOException {
    AtomicSave save = at(file);
    Optional<Kept> kept = Files.exists(save.target) ? save.keepAside(lastSeen) : Optional.empty();
    save.replace(bytes);
    return new SavedFile(file, kept);
  }

  static AtomicSave at(Path file) throws IOException {
    // Through a link, so that the link stays one.
    return new AtomicSave(Files.exists(file) ? file.toRealPath() : file.toAbsolutePath());
  }

  void replace(byte[] bytes) throws IOException {
    Path fresh = target.resolveSibling(hidden());
    try {
      write(bytes, fresh);
      copyPermissions(fresh);
      Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
      force(target.getParent());
    } finally {
      Files.deleteIfExists(fresh);
    }
    sweep();
  }

  private String hidden() {
    String random = Long.toString(ThreadLocalRandom.current().nextLong(Long.MAX_VALUE), 36);
    return prefix() + random + SUFFIX;
  }

  private String prefix() {
    return "." + target.getFileName() + ".";
  }

  /** Clears away what saves that were killed left half written. */
  private void sweep() throws IOException {
    Instant old = Instant.now().minus(SURELY_ABANDONED);
    DirectoryStream.Filter<Path> abandoned =
        f ->
            f.getFileName().toString().startsWith(prefix())
                && f.getFileName().toString().endsWith(SUFFIX)
                && Files.getLastModifiedTime(f).toInstant().isBefore(old);
    try (DirectoryStream<Path> files = Files.newDirectoryStream(target.getParent(), abandoned)) {
      for (Path file : files) {
        Files.deleteIfExists(file);
      }
    } catch (DirectoryIteratorException | NoSuchFileException e) {
      return; // Another save is clearing up at the same time.
    }
  }

  private static void write(byte[] bytes, Path file) throws IOException {
    try (FileChannel out =
        FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        out.write(rest);
      }
      // Before the move: a power cut must not leave a name with nothing behind it.
      out.force(true);
    }
  }

  private void copyPermissions(Path fresh) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(fresh, PosixFileAttributeView.class);
    if (view != null && Files.exists(target)) {
      view.setPermissions(Files.getPosixFilePermissions(target));
    }
  }

  /** Makes the move itself last; not every system lets a folder be opened for that. */
  private static void force(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      return; // The file is whole either way; only how soon the move is on the disk differs.
    }
  }

  private Optional<Kept> keepAside(Optional<Lease> lastSeen) throws IOException {
    try {
      Lease there = LeaseReader.read(target.toString(), Files.readAllBytes(target));
      return lastSeen.isEmpty() || same(lastSeen.get(), there)
          ? Optional.empty()
          : Optional.of(new Kept(copyAside(), Why.CHANGED));
    } catch (LeaseFileException e) {
      return Optional.of(new Kept(copyAside(), Why.UNREADABLE));
    }
  }

  private static boolean same(Lease a, Lease b) {
    return Arrays.equals(LeaseFiles.write(a), LeaseFiles.write(b));
  }

  private Path copyAside() throws IOException {
    for (int n = 1; ; n++) {
      Path aside = target.resolveSibling(target.getFileName() + (n == 1 ? "~" : "~" + n));
      try {
        return Files.copy(target, aside, StandardCopyOption.COPY_ATTRIBUTES);
      } catch (FileAlreadyExistsException e) {
        continue; // An earlier one is kept there; take the next name.
      }
    }
  }
}
