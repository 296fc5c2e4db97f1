package tankyard.app.files;

import java.nio.file.Path;
import java.util.Optional;

/** Asks for a file; tests hand one in. */
public interface FilePicker {
  Optional<Path> toOpen();

  /**
   * Asks where to save.
   *
   * @param suggested file name
   * @param ending of the file's name, with the point
   * @param what the sort of file in words
   */
  Optional<Path> toSave(String suggested, String ending, String what);
}
