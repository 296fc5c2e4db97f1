package tankyard.engine.verification;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

class VerificationPageTest {
  private static final Path PAGE = Path.of("..", "docs", "verification.md");

  @Test
  void the_page_shows_what_the_tests_compute() throws IOException {
    String wanted = VerificationPage.of(topics());
    if (Boolean.getBoolean("verification.write")) {
      Files.createDirectories(PAGE.getParent());
      Files.writeString(PAGE, wanted);
    }
    assertThat(Files.readString(PAGE))
        .as("docs/verification.md is out of date; its head says how to write it anew")
        .isEqualTo(wanted);
  }

  @Test
  void every_topic_is_found() {
    assertThat(topics()).hasSizeGreaterThanOrEqualTo(7);
  }

  /** Every test class that implements {@link CheckedRows}, so that nobody keeps a list. */
  private static List<CheckedRows> topics() {
    List<CheckedRows> topics = new ArrayList<>();
    for (JavaClass c : new ClassFileImporter().importPackages("tankyard.engine")) {
      if (c.isAssignableTo(CheckedRows.class) && !c.isInterface()) {
        topics.add(made(c.reflect()));
      }
    }
    topics.sort(Comparator.comparing(CheckedRows::topic));
    return topics;
  }

  private static CheckedRows made(Class<?> type) {
    try {
      Constructor<?> constructor = type.getDeclaredConstructor();
      constructor.setAccessible(true);
      return (CheckedRows) constructor.newInstance();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(type.getName() + " needs a constructor without arguments", e);
    }
  }
}
