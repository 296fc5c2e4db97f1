package tankyard.engine.leasefile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;

/** The one door to lease files. */
public final class LeaseFiles {
  /** How a lease file's name ends. */
  public static final String EXTENSION = ".lease.json";

  private static final String READABLE = "a lease file that can be read";
  private static final String WRITABLE = "a file name in a folder that can be written to";

  private LeaseFiles() {}

  /**
   * Reads a lease.
   *
   * @throws LeaseFileException saying what is wrong with the file, or that there is none
   */
  public static Lease read(Path file) throws LeaseFileException {
    if (Files.isDirectory(file)) {
      throw problem(file.toString(), "a folder", READABLE, null);
    }
    try (InputStream in = Files.newInputStream(file)) {
      return read(file.toString(), in);
    } catch (LeaseFileException e) {
      throw e;
    } catch (NoSuchFileException e) {
      throw problem(file.toString(), "no such file", READABLE, e);
    } catch (AccessDeniedException e) {
      throw problem(file.toString(), "a file that you may not read", READABLE, e);
    } catch (FileSystemException e) {
      throw problem(
          file.toString(), "a file that does not open (" + e.getReason() + ")", READABLE, e);
    } catch (IOException e) {
      throw problem(
          file.toString(), "a file that does not open (" + e.getMessage() + ")", READABLE, e);
    }
  }

  /**
   * Reads a lease.
   *
   * @param name what messages call the file
   */
  public static Lease read(String name, InputStream in) throws LeaseFileException {
    byte[] bytes;
    try {
      bytes = in.readNBytes(Utf8.MOST_BYTES + 1);
    } catch (IOException e) {
      throw problem(name, "a file that breaks off (" + e.getMessage() + ")", READABLE, e);
    }
    return LeaseReader.read(name, bytes);
  }

  /** The file's bytes: the same lease gives the same bytes. */
  public static byte[] write(Lease lease) {
    return toJson(lease).getBytes(StandardCharsets.UTF_8);
  }

  /** The file's text. */
  public static String toJson(Lease lease) {
    ObjectNode tree = LeaseVersions.CURRENT.head();
    tree.setAll(LeaseMapper.toTree(lease));
    UnknownFields.putBack(tree, lease.unknowns());
    return LeasePrinter.print(tree);
  }

  /**
   * What would keep the lease's file from being read again; empty if nothing. An edit that brings a
   * problem in is best refused at once.
   *
   * @param name what messages call the file
   */
  public static List<Problem> problems(String name, Lease lease) {
    try {
      LeaseReader.read(name, write(lease));
      return List.of();
    } catch (LeaseFileException e) {
      return e.problems().stream().map(LeaseFiles::withoutPosition).toList();
    }
  }

  /**
   * Saves a lease. At every moment the file is the old one or the new one, whole. A file that
   * stands there and can't be read as a lease is kept beside it.
   *
   * @throws LeaseFileException if the lease could not be read again, or the file can't be written;
   *     what stood there is unchanged then
   */
  public static SavedFile save(Lease lease, Path file) throws LeaseFileException {
    return save(lease, file, Optional.empty());
  }

  /**
   * Saves a lease as {@link #save(Lease, Path)} does, and keeps a lease that somebody else wrote
   * there meanwhile beside it too.
   *
   * @param lastSeen the lease that was last read from that file or written to it; empty where what
   *     stands there may go
   */
  public static SavedFile save(Lease lease, Path file, Optional<Lease> lastSeen)
      throws LeaseFileException {
    List<Problem> problems = problems(file.toString(), lease);
    if (!problems.isEmpty()) {
      throw new LeaseFileException(problems, null);
    }
    if (Files.isDirectory(file)) {
      throw problem(file.toString(), "a folder", WRITABLE, null);
    }
    try {
      return AtomicSave.save(write(lease), file, lastSeen);
    } catch (NoSuchFileException e) {
      throw problem(file.toString(), "no such folder", WRITABLE, e);
    } catch (AccessDeniedException e) {
      throw problem(file.toString(), "no permission to write there", WRITABLE, e);
    } catch (IOException e) {
      throw problem(file.toString(), "a place that takes no file (" + e + ")", WRITABLE, e);
    }
  }

  /** The lines of a file that is not written yet are no place to send anybody to. */
  private static Problem withoutPosition(Problem p) {
    return new Problem(p.file(), p.place(), Optional.empty(), p.found(), p.accepted());
  }

  private static LeaseFileException problem(
      String file, String found, String accepted, Throwable cause) {
    return new LeaseFileException(
        List.of(new Problem(file, "", Optional.empty(), found, accepted)), cause);
  }
}
