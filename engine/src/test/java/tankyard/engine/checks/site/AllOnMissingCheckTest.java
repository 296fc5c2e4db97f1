package tankyard.engine.checks.site;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;

/** The fifth public case, whose fourteen wells run 12 h a day. */
class AllOnMissingCheckTest {
  private static final Looked P5 = Looked.at("p5-prairie-flood");
  private static final Looked AVERAGES = P5.withEach("/cases", "running", "average");

  @Test
  void wellsOnTimersAskForACaseWithAllOfThemOn() {
    assertThat(P5.says("no-all-on-case")).isFalse();
    assertThat(AVERAGES.the("no-all-on-case").severity()).isEqualTo(Severity.LOOK);
    assertThat(AVERAGES.the("no-all-on-case").words()).contains("14 wells run");
  }

  @Test
  void wellsThatNeverStopHaveNoPeak() {
    assertThat(AVERAGES.withEach("/wells", "runsPerDay", "24 h").says("no-all-on-case")).isFalse();
    assertThat(AVERAGES.withEach("/wells", "runsPerDay", "23.9 h").says("no-all-on-case")).isTrue();
  }
}
