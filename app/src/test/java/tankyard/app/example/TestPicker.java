package tankyard.app.example;

import java.nio.file.Path;
import java.util.Optional;
import tankyard.app.files.FilePicker;

/** Hands in the file it was told to; none until then. */
public final class TestPicker implements FilePicker {
  private Optional<Path> file = Optional.empty();

  public void pick(Path next) {
    file = Optional.of(next);
  }

  public void cancel() {
    file = Optional.empty();
  }

  @Override
  public Optional<Path> toOpen() {
    return file;
  }

  @Override
  public Optional<Path> toSave(String suggested, String ending, String what) {
    return file;
  }
}
