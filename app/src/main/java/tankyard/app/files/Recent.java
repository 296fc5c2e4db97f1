package tankyard.app.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import tankyard.app.memory.Memory;

/** The files opened or saved last, the latest first. */
public final class Recent {
  private static final String KEY = "files.recent";
  private static final int MOST = 8;

  private final Memory memory;
  private final ObservableList<Path> files = FXCollections.observableArrayList();

  Recent(Memory memory) {
    this.memory = memory;
    memory
        .get(KEY)
        .ifPresent(
            text ->
                Stream.of(text.split("\n", -1))
                    .filter(line -> !line.isBlank())
                    .map(Path::of)
                    .forEach(files::add));
  }

  public ObservableList<Path> files() {
    return FXCollections.unmodifiableObservableList(files);
  }

  void add(Path file) {
    List<Path> next = new ArrayList<>(files);
    next.remove(file);
    next.add(0, file);
    keep(next.subList(0, Math.min(MOST, next.size())));
  }

  /** For a file that is no longer there. */
  void drop(Path file) {
    List<Path> next = new ArrayList<>(files);
    next.remove(file);
    keep(next);
  }

  private void keep(List<Path> next) {
    files.setAll(next);
    memory.put(KEY, String.join("\n", next.stream().map(Path::toString).toList()));
  }
}
