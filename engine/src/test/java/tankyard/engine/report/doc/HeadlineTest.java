package tankyard.engine.report.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.report.Examples;
import tankyard.engine.report.json.ResultsJson;
import tankyard.engine.report.sheet.PlainSheet;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.window.Window;

/** Every printed headline number says what its working says. */
class HeadlineTest {
  /** Printed constants such as 0.4331 have four figures, so a working may be off by so much. */
  private static final double CONSTANTS = 1e-4;

  @Test
  void everyHeadlineNumberAgreesWithItsWorkingToThePrintedDigits() throws Exception {
    List<String> wrong = new ArrayList<>();
    int looked = 0;
    for (Results results : Examples.all()) {
      for (UnitSystem units : UnitSystem.values()) {
        for (Headline headline : headlines(results, units)) {
          looked++;
          if (!agrees(headline)) {
            wrong.add(
                results.lease().name()
                    + ": "
                    + headline.what()
                    + " "
                    + headline.digits()
                    + ", worked out "
                    + headline.working().line());
          }
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(looked).isGreaterThan(500);
  }

  private static List<Headline> headlines(Results results, UnitSystem units) {
    return Arrays.stream(Page.values())
        .flatMap(page -> page.of(results, units).headlines().stream())
        .toList();
  }

  private static boolean agrees(Headline headline) {
    double worked =
        headline.unit().fromSi(headline.working().unit().toSi(headline.working().value()));
    double printed = Double.parseDouble(headline.digits());
    double step = Math.pow(10, -headline.decimals());
    double slack = CONSTANTS * Math.abs(worked) + 1e-9;
    return switch (headline.rounding()) {
      case NEAREST -> Math.abs(printed - worked) <= step / 2 + slack;
      case UP -> printed >= worked - slack && printed - worked < step + slack;
      case DOWN -> printed <= worked + slack && worked - printed < step + slack;
    };
  }

  @Test
  void theLeastIsRoundedUpAndTheMostDown() throws Exception {
    Report report = LeaseReport.of(Examples.of("p1-osage-bend"), UnitSystem.FIELD);

    Headline least = find(report, "Separator: Water tank's inlet");
    Headline box = find(report, "Separator: Well 3's stuffing box");
    assertThat(least.working().value()).isBetween(7.51, 7.53);
    assertThat(least.digits()).isEqualTo("7.6");
    assertThat(box.working().value()).isBetween(35.05, 35.1);
    assertThat(box.digits()).isEqualTo("35.0");
  }

  @Test
  void everyLimitFromBelowIsRoundedUpAndEveryLimitFromAboveDown() throws Exception {
    int looked = 0;
    for (Results results : Examples.all()) {
      for (Window window : results.windows()) {
        looked += window.needed().size() + window.allowed().size();
        assertThat(window.needed())
            .allSatisfy(l -> assertThat(l.rounding()).isEqualTo(Rounding.UP));
        assertThat(window.allowed())
            .allSatisfy(l -> assertThat(l.rounding()).isEqualTo(Rounding.DOWN));
      }
    }
    assertThat(looked).isGreaterThan(50);
  }

  @Test
  void theJsonSaysTheSameSentenceAsTheSheet() throws Exception {
    Results results = Examples.of("p1-osage-bend");
    String sentence = LeaseReport.headline(results, UnitSystem.FIELD).get(0);

    assertThat(sentence).contains("at least 7.6 psi").contains("at most 27.0 psi");
    assertThat(PlainSheet.print(LeaseReport.of(results, UnitSystem.FIELD)).replaceAll("\\s+", " "))
        .contains(sentence);
    assertThat(ResultsJson.write(results)).contains("\"" + sentence + "\"");
  }

  private static Headline find(Report report, String what) {
    return report.headlines().stream().filter(h -> h.what().equals(what)).findFirst().orElseThrow();
  }

  @Test
  void aRoundNumberIsNotPushedToTheNextStep() {
    assertThat(Rounding.UP.round(7.5 + 1e-12, 1)).isEqualTo(7.5);
    assertThat(Rounding.UP.round(7.501, 1)).isEqualTo(7.6);
    assertThat(Rounding.DOWN.round(27 - 1e-12, 1)).isEqualTo(27);
    assertThat(Rounding.DOWN.round(-0.01, 1)).isEqualTo(-0.1);
  }

  @Test
  void workingsThatSayTheSameStandOnce() throws Exception {
    Report report = LeaseReport.of(Examples.of("p1-osage-bend"), UnitSystem.FIELD);

    assertThat(report.workings()).extracting(NumberedWorking::working).doesNotHaveDuplicates();
    for (NumberedWorking working : report.workings()) {
      assertThat(working.number()).isBetween(1, report.workings().size());
      assertThat(working.from())
          .allSatisfy(n -> assertThat(n).isLessThanOrEqualTo(report.workings().size()));
    }
  }
}
