package tankyard.engine.report.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.report.Examples;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Window;

/** What is printed of the limits from above, and what is only counted. */
class NearLimitsTest {
  private static List<PressureLimit> near(Window window) {
    return NearLimits.of(window.allowed(), UnitSystem.FIELD);
  }

  @Test
  void rowsThatSayAgainWhatStandsAboveThemAreCounted() throws IOException {
    Window creek = Examples.of("p3-coyote-creek").windows().get(0);
    List<PressureLimit> near = near(creek);

    // Nine wells' lines alike, of which the lowest five; and the header's, a little higher.
    assertThat(creek.allowed()).hasSize(10);
    assertThat(near).hasSize(6).startsWith(creek.allowed().get(0)).endsWith(creek.allowed().get(9));
    assertThat(NearLimits.leftOut(creek.allowed(), near, UnitSystem.FIELD))
        .hasValueSatisfying(w -> assertThat(w).startsWith("4 more, from 76.4 psi up"));
  }

  @Test
  void theLowestFiveAlwaysStandAndNoneBelowTwiceTheLowestIsLostUnlessAlike() throws IOException {
    int leftOut = 0;
    for (Results results : Examples.all()) {
      for (Window window : results.windows()) {
        List<PressureLimit> allowed = window.allowed();
        List<PressureLimit> near = near(window);
        leftOut += allowed.size() - near.size();

        assertThat(near)
            .startsWith(
                allowed.subList(0, Math.min(5, allowed.size())).toArray(new PressureLimit[0]));
        for (PressureLimit limit : allowed) {
          boolean far = psi(limit) >= 2 * psi(allowed.get(0));
          boolean alike =
              near.stream()
                  .anyMatch(
                      n ->
                          n.kind() == limit.kind()
                              && n.caseId().equals(limit.caseId())
                              && Math.abs(psi(n) - psi(limit)) < 0.1);
          assertThat(near.contains(limit) || far || alike).as(limit.name()).isTrue();
          assertThat(near.indexOf(limit) < 5 || !far).as(limit.name()).isTrue();
        }
        assertThat(NearLimits.leftOut(allowed, near, UnitSystem.FIELD).isPresent())
            .isEqualTo(near.size() < allowed.size());
      }
    }
    assertThat(leftOut).isGreaterThan(20);
  }

  private static double psi(PressureLimit limit) {
    return limit.gauge().value().toPsi();
  }
}
