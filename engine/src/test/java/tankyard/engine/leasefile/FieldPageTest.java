package tankyard.engine.leasefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class FieldPageTest {
  private static final Path PAGE = Path.of("../docs/lease-file-fields.md");

  @Test
  void thePublishedPageNamesEveryFieldAsItIs() throws Exception {
    if (Boolean.getBoolean("fields.write")) {
      Files.writeString(PAGE, FieldPage.write());
    }
    assertThat(Files.readString(PAGE))
        .as("docs/lease-file-fields.md is out of date; its head says how to write it anew")
        .isEqualTo(FieldPage.write());
  }
}
