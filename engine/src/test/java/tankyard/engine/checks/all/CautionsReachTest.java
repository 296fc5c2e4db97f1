package tankyard.engine.checks.all;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.report.Examples;
import tankyard.engine.report.doc.Block;
import tankyard.engine.report.doc.LeaseReport;
import tankyard.engine.report.doc.Results;
import tankyard.engine.report.doc.Section;
import tankyard.engine.report.json.ResultsJson;
import tankyard.engine.study.CaseCaution;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.working.Caution;

/** What a law says must be read with care reaches whoever reads a lease's results. */
class CautionsReachTest {
  private static final Path ENGINE = Path.of("src", "main", "java", "tankyard", "engine");
  private static final Pattern MADE =
      Pattern.compile("(?:new Caution|\\bsay)\\(\\s*\"([a-z0-9-]+)\"");

  /** The cautions no finding on a lease carries under their own id, and why not. */
  private static final Map<String, String> ELSEWHERE = elsewhere();

  private static Map<String, String> elsewhere() {
    Map<String, String> why = new LinkedHashMap<>();
    why.put("interface-outside-vessel", "WeirCheck says it in gun-barrel-weir-off");
    why.put(
        "overflow-slope-binds", "no range: the overflow's table and overflow-too-small show both");
    why.put("injection-limit-screening", "PermitUnknownCheck says it in permit-unknown");
    return why;
  }

  /** Ids by the file they are made in, the quick sums left out: those print their own. */
  private static Map<String, Path> made() throws IOException {
    Map<String, Path> made = new TreeMap<>();
    try (Stream<Path> files = Files.walk(ENGINE)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        if (!file.startsWith(ENGINE.resolve("quick"))) {
          Matcher matcher = MADE.matcher(Files.readString(file));
          while (matcher.find()) {
            made.put(matcher.group(1), file);
          }
        }
      }
    }
    return made;
  }

  @Test
  void everyCautionALawCanGiveIsAFindingOrHasAReason() throws IOException {
    Set<String> given =
        AllChecks.list().stream().flatMap(c -> c.gives().stream()).collect(Collectors.toSet());
    Set<String> dropped = new TreeSet<>(made().keySet());
    dropped.removeAll(given);

    assertThat(dropped).isEqualTo(new TreeSet<>(ELSEWHERE.keySet()));
  }

  @Test
  void noCautionIsMadeWhereTheTestAboveDoesNotSeeIt() throws IOException {
    // Under an id that is not written out: in those two the id was written out before.
    Set<String> passedOn = Set.of("GasLiquidCautions.java", "CaseCautions.java");
    Pattern any = Pattern.compile("new Caution\\((?!\\s*\")");
    try (Stream<Path> files = Files.walk(ENGINE)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        if (!passedOn.contains(file.getFileName().toString())
            && !file.startsWith(ENGINE.resolve("quick"))) {
          assertThat(any.matcher(Files.readString(file)).find()).as(file.toString()).isFalse();
        }
      }
    }
  }

  @Test
  void everyCautionOfEveryLineOfTheExamplesIsOneOfItsCase() throws IOException {
    int seen = 0;
    for (Results results : Examples.all()) {
      for (CaseResult result : results.cases()) {
        for (LineResult line : result.lines()) {
          for (Caution caution : cautions(line)) {
            seen++;
            assertThat(result.cautions())
                .as(line.lineId() + " " + caution.id())
                .anyMatch(c -> c.id().equals(caution.id()) && holdsFor(c, line.lineId()));
          }
        }
      }
    }
    assertThat(seen).isGreaterThan(50);
  }

  @Test
  void everyCautionOfACaseIsToldOnceOnThePageAsAFindingAndInTheJson() throws IOException {
    for (Results results : Examples.all()) {
      List<CaseCaution> together = CaseCaution.together(results.cases());
      String json = ResultsJson.write(results);

      assertThat(careOf(results)).isEmpty();
      for (CaseCaution caution : together) {
        assertThat(results.findings())
            .filteredOn(f -> f.id().equals(caution.id()))
            .singleElement()
            .satisfies(f -> assertThat(f.words()).endsWith(caution.words()));
        assertThat(json).contains("\"id\": \"" + caution.id() + "\"");
      }
    }
  }

  @Test
  void aCautionThatIsNoFindingIsStillToReadWithCare() throws IOException {
    Results wax = Examples.of("p6-black-wax");
    List<CaseCaution> together = CaseCaution.together(wax.cases());
    String dropped = together.get(0).id();
    List<Finding> others = wax.findings().stream().filter(f -> !f.id().equals(dropped)).toList();

    assertThat(careOf(wax.withFindings(others)))
        .singleElement()
        .satisfies(words -> assertThat(words).endsWith(together.get(0).words()));
  }

  private static List<Caution> cautions(LineResult line) {
    return Stream.concat(line.friction().cautions().stream(), line.viscosity().cautions().stream())
        .toList();
  }

  private static boolean holdsFor(CaseCaution caution, String lineId) {
    return caution.things().isEmpty() || caution.things().contains(lineId);
  }

  private static List<String> careOf(Results results) {
    return LeaseReport.of(results, UnitSystem.FIELD).sections().stream()
        .filter(s -> s.title().equals("Read with care"))
        .map(Section::blocks)
        .flatMap(List::stream)
        .map(b -> ((Block.Points) b).points())
        .flatMap(List::stream)
        .toList();
  }
}
