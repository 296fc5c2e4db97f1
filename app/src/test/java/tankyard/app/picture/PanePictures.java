package tankyard.app.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Takes every pane in both shades and at 125 % for the checklist of screens. */
@Tag("picture")
class PanePictures {
  private static final Path FOLDER = Path.of("target/pictures");

  @Test
  void take() throws Exception {
    SnapshotTool.takeEveryPane(FOLDER, System.getProperty("pictures", ""));
    try (Stream<Path> taken = Files.list(FOLDER)) {
      assertThat(taken).isNotEmpty();
    }
  }
}
