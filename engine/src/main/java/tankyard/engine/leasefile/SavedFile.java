package tankyard.engine.leasefile;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What a save did.
 *
 * @param file written
 * @param keptAside what stood there before, if it was not to be written over
 */
public record SavedFile(Path file, Optional<Kept> keptAside) {
  /**
   * A file kept beside the one that took its place.
   *
   * @param file where it went
   */
  public record Kept(Path file, Why why) {}

  /** Why a file is kept. */
  public enum Why {
    /** It is no lease that can be read. */
    UNREADABLE,
    /** Somebody else wrote it since it was last read or written here. */
    CHANGED
  }
}
