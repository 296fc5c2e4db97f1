package tankyard.engine.checks.all;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.report.Examples;
import tankyard.engine.report.doc.LeaseReport;
import tankyard.engine.report.doc.Results;
import tankyard.engine.units.UnitSystem;

/** A least is rounded up and a most down, and both read the same wherever they are told. */
class HeadlineAndFindingTest {
  private static final Pattern ENDS =
      Pattern.compile("the gauge must read at least ([-.0-9]+) psi .*?at most ([-.0-9]+) psi");

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
  void theLeastOfTheBlackWaxLeaseIsRoundedUp() throws IOException {
    Results wax = Examples.of("p6-black-wax");
    double least = wax.windows().get(0).least().orElseThrow().gauge().value().toPsi();
    String up =
        String.format(java.util.Locale.ROOT, "at least %.1f psi", Math.ceil(least * 10) / 10);

    assertThat(wax.findings())
        .filteredOn(f -> f.id().equals("window-closed"))
        .singleElement()
        .satisfies(f -> assertThat(f.words()).contains(up));
    assertThat(LeaseReport.headline(wax, UnitSystem.FIELD)).anyMatch(l -> l.contains(up));
  }
}
