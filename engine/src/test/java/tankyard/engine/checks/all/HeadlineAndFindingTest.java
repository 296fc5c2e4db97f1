package tankyard.engine.checks.all;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.report.Examples;
import tankyard.engine.report.doc.LeaseReport;
import tankyard.engine.report.doc.Results;
import tankyard.engine.report.json.ResultsJson;
import tankyard.engine.report.sheet.PlainSheet;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.window.PressureLimit;

/** A least is rounded up and a most down, and both read the same wherever they are told. */
class HeadlineAndFindingTest {
  private static final Pattern ENDS =
      Pattern.compile(
          "the gauge must read at least ([-.0-9]+) psi .*?(?:at most|the way alone loses) ([-.0-9]+) psi");

  @Test
  void aClosedWindowHasTheSameEndsInHeadlineAndFinding() throws IOException {
    int closed = 0;
    for (Results results : Examples.all()) {
      List<String> headline = LeaseReport.headline(results, UnitSystem.FIELD);
      for (Finding finding : results.findings()) {
        Matcher told = ENDS.matcher(finding.words());
        if (finding.id().equals("window-closed") && told.find()) {
          closed++;
          assertThat(headline)
              .anySatisfy(
                  line -> {
                    Matcher head = ENDS.matcher(line);
                    assertThat(head.find()).isTrue();
                    assertThat(head.group(1)).isEqualTo(told.group(1));
                    assertThat(head.group(2)).isEqualTo(told.group(2));
                  });
        }
      }
    }
    assertThat(closed).isPositive();
  }

  @Test
  void aMostBelowNothingIsToldByWhatTheWayLosesAndLifts() throws IOException {
    Results wax = Examples.of("p6-black-wax");
    PressureLimit most = wax.windows().get(0).most().orElseThrow();
    String told =
        String.format(
            Locale.ROOT,
            "no reading of the gauge would do for %s: the way alone loses %.1f psi and lifts %.1f psi",
            most.name(),
            most.friction().toPsi(),
            most.lift().toPsi());

    assertThat(most.gauge().value().toPsi()).isBetween(-256.0, -255.0);
    assertThat(LeaseReport.headline(wax, UnitSystem.FIELD))
        .anySatisfy(line -> assertThat(line).contains(told).doesNotContain("-255"));
    assertThat(wax.findings())
        .filteredOn(f -> List.of("window-closed", "setting-above-most").contains(f.id()))
        .hasSize(2)
        .allSatisfy(f -> assertThat(f.words()).contains(told).doesNotContain("-255"));
    assertThat(PlainSheet.print(LeaseReport.of(wax, UnitSystem.FIELD)))
        .contains("most        -255.6");
    assertThat(ResultsJson.write(wax)).contains("-255.");
  }

  @Test
  void aMostOfWhatIsTypedSaysHowManyLimitsAreNotKnown() throws IOException {
    Results creek = Examples.of("p3-coyote-creek");

    // Nine stuffing boxes, relief valve, nameplate, gauge and float; heat is no limit of its own.
    assertThat(creek.windows().get(0).limitsNotKnown()).isEqualTo(13);
    assertThat(LeaseReport.headline(creek, UnitSystem.FIELD))
        .anyMatch(
            l ->
                l.contains("at most 76.4 psi of what is typed (")
                    && l.contains("); 13 limits are not known."));
    for (Results results : Examples.all()) {
      for (int i = 0; i < results.windows().size(); i++) {
        boolean all = results.windows().get(i).limitsNotKnown() == 0;
        assertThat(LeaseReport.headline(results, UnitSystem.FIELD).get(i).contains("not known"))
            .isEqualTo(!all && results.windows().get(i).most().isPresent());
      }
    }
  }

  @Test
  void aBermsHeightIsRoundedUpWhereverItIsTold() throws IOException {
    Results creek = Examples.of("p3-coyote-creek");
    double needed = creek.yard().berms().get(0).needed().value().toFeet();
    String up = String.format(Locale.ROOT, "%.2f ft", Math.ceil(needed * 100) / 100);

    assertThat(needed * 100 % 1).isBetween(0.001, 0.499);
    assertThat(creek.findings())
        .filteredOn(f -> f.id().equals("berm-height"))
        .singleElement()
        .satisfies(f -> assertThat(f.words()).contains("needs " + up));
    assertThat(PlainSheet.print(LeaseReport.of(creek, UnitSystem.FIELD)).replaceAll("\\s+", " "))
        .contains("must stand " + up);
  }

  @Test
  void theLeastOfTheBlackWaxLeaseIsRoundedUp() throws IOException {
    Results wax = Examples.of("p6-black-wax");
    double least = wax.windows().get(0).least().orElseThrow().gauge().value().toPsi();
    String up = String.format(Locale.ROOT, "at least %.1f psi", Math.ceil(least * 10) / 10);

    assertThat(wax.findings())
        .filteredOn(f -> f.id().equals("window-closed"))
        .singleElement()
        .satisfies(f -> assertThat(f.words()).contains(up));
    assertThat(LeaseReport.headline(wax, UnitSystem.FIELD)).anyMatch(l -> l.contains(up));
  }
}
