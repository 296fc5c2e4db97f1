package tankyard.app.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Takes the pictures of the manual anew; see docs/howto/take-the-pictures.md. */
@Tag("picture")
class ManualPictures {
  private static final Path FOLDER = Path.of("../docs/images");

  @Test
  void take() throws Exception {
    SnapshotTool.takeForTheManual(FOLDER);
    assertThat(FOLDER.resolve("studio-light.png")).isNotEmptyFile();
  }
}
