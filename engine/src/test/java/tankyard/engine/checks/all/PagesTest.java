package tankyard.engine.checks.all;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every finding there can be has its page, and every page is about one. */
class PagesTest {
  private static final Path PAGES = Path.of("..", "docs", "checks");
  private static final Path ENGINE = Path.of("src", "main", "java", "tankyard", "engine");

  private static Set<String> given() {
    return AllChecks.list().stream()
        .flatMap(c -> c.gives().stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> pages() throws IOException {
    try (Stream<Path> files = Files.list(PAGES)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(n -> n.endsWith(".md") && !n.equals("README.md"))
          .map(n -> n.substring(0, n.length() - ".md".length()))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  /** Ids written where such a thing is made, in the sources of a package. */
  private static Set<String> idsMadeBy(String packageName, Pattern made) throws IOException {
    Set<String> ids = new TreeSet<>();
    try (Stream<Path> files = Files.list(ENGINE.resolve(packageName))) {
      for (Path file : files.toList()) {
        Matcher matcher = made.matcher(Files.readString(file));
        while (matcher.find()) {
          ids.add(matcher.group(1));
        }
      }
    }
    return ids;
  }

  @Test
  void everyIdHasAPageAndEveryPageAnId() throws IOException {
    assertThat(pages()).isEqualTo(given());
  }

  @Test
  void everyPageSaysWhatWhenWhyWhatToDoAndWhereFrom() throws IOException {
    for (String id : pages()) {
      assertThat(Files.readString(PAGES.resolve(id + ".md")))
          .startsWith("# " + id + "\n")
          .contains("**When it shows.**")
          .contains("**Why it matters.**")
          .contains("**What to do.**")
          .contains("**Source.**");
    }
  }

  @Test
  void theIndexLinksEveryPage() throws IOException {
    String index = Files.readString(PAGES.resolve("README.md"));

    assertThat(given()).allSatisfy(id -> assertThat(index).contains("[" + id + "](" + id + ".md)"));
  }

  @Test
  void everyCautionOfTheLiquidsIsKnownToTheChecks() throws IOException {
    Set<String> made = idsMadeBy("fluids", Pattern.compile("new Caution\\(\\s*\"([a-z-]+)\""));

    assertThat(made).hasSizeGreaterThan(5);
    assertThat(given()).containsAll(made);
  }

  @Test
  void everyDiagnosisOfTheSurveyIsKnownToTheChecks() throws IOException {
    Set<String> made = idsMadeBy("study", Pattern.compile("\"((?:no|pipe)-[a-z-]+)\""));

    assertThat(made).contains("no-water-leg", "pipe-unknown");
    assertThat(given()).containsAll(made);
  }
}
