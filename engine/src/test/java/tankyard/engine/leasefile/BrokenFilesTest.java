package tankyard.engine.leasefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every sort of damage gives one clear error, and reading changes nothing. */
class BrokenFilesTest {
  private static final Path GOOD =
      ExampleFilesTest.FOLDER.resolve("p1-osage-bend-priced" + LeaseFiles.EXTENSION);
  private static final long SEED = 20260731;
  private static final int LONGEST_LINE = 400;

  @TempDir Path folder;

  private static List<BrokenFile> files() throws Exception {
    String good = Files.readString(GOOD);
    List<BrokenFile> files = new ArrayList<>(BrokenTexts.of(good, SEED));
    files.addAll(BrokenFiles.of(good, SEED));
    return files;
  }

  @Test
  void everyBrokenFileGivesOneClearFirstErrorAndStaysAsItIs() throws Exception {
    Map<String, Integer> mix = new TreeMap<>();
    Map<String, String> sample = new HashMap<>();
    for (BrokenFile broken : files()) {
      Path file = folder.resolve("broken" + LeaseFiles.EXTENSION);
      Files.write(file, broken.bytes());

      LeaseFileException e =
          catchThrowableOfType(LeaseFileException.class, () -> LeaseFiles.read(file));

      assertThat(e).as(broken.kind() + ", looking for " + broken.found()).isNotNull();
      String line = e.problems().get(0).inOneLine();
      assertThat(e).hasMessage(line);
      assertThat(line)
          .startsWith(file.toString())
          .contains("found ", broken.found(), "; accepted: ")
          .doesNotContain(
              "\n", "\r", "Exception", "tankyard.", "com.fasterxml", "$.", "Feature", "is no JSON")
          .hasSizeLessThan(LONGEST_LINE);
      assertThatItSaysWhere(broken, e.problems().get(0));
      try (Stream<Path> left = Files.list(folder)) {
        assertThat(left).containsExactly(file);
      }
      assertThat(file).hasBinaryContent(broken.bytes());
      mix.merge(broken.kind(), 1, Integer::sum);
      sample.putIfAbsent(broken.kind(), line.substring(folder.toString().length() + 1));
    }
    int count = mix.values().stream().mapToInt(Integer::intValue).sum();
    System.out.println(count + " broken files of " + mix.size() + " kinds:");
    mix.forEach((kind, n) -> System.out.printf("  %2d %s: %s%n", n, kind, sample.get(kind)));
    assertThat(count).isGreaterThanOrEqualTo(100);
    assertThat(mix).hasSizeGreaterThanOrEqualTo(20);
  }

  private static void assertThatItSaysWhere(BrokenFile broken, Problem first) {
    if (broken.place().isPresent()) {
      assertThat(first.place()).as(first.inOneLine()).isEqualTo(broken.place().get());
      assertThat(first.position()).as(first.inOneLine()).isPresent();
    } else if (isText(broken)) {
      assertThat(first.position()).as(first.inOneLine()).isPresent();
    }
  }

  /** Where nothing in the file is text, there is no line to name. */
  private static boolean isText(BrokenFile broken) {
    return !List.of("empty", "too large", "not text", "UTF-16", "another encoding")
        .contains(broken.kind());
  }

  @Test
  void aByteOrderMarkIsNoDamage() throws Exception {
    Path file = folder.resolve("marked" + LeaseFiles.EXTENSION);
    Files.writeString(file, "\uFEFF" + Files.readString(GOOD));

    assertThat(LeaseFiles.read(file)).isEqualTo(LeaseFiles.read(GOOD));
  }
}
