package tankyard.engine.checks.all;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Looked;
import tankyard.engine.study.LineResult;

/** The decisions of the waxy lease: January against July, and which cure cures. */
class BlackWaxTest {

  @Test
  void itRunsInJulyAndBreaksInJanuary() {
    Looked base = Looked.at("p6-black-wax");

    assertThat(isOver(base, "july")).isFalse();
    assertThat(isOver(base, "january")).isTrue();
    assertThat(
            base.all("pipe-over-rating").stream()
                .flatMap(f -> f.caseId().stream())
                .allMatch(c -> c.startsWith("january")))
        .isTrue();
    assertThat(base.says("restart-over-rating")).isTrue();
  }

  @Test
  void separateLinesDoNotHelp() {
    Looked three = Looked.at("p6-black-wax-three-lines");

    assertThat(three.says("pipe-over-rating")).isTrue();
    assertThat(three.says("restart-over-rating")).isTrue();
  }

  @Test
  void aThreeInchTrunkHoldsOnAverageButNotWhereStrokesMeetAndIsNotTrustedToStart() {
    Looked wider = Looked.at("p6-black-wax-3in");

    assertThat(isOver(wider, "january")).isFalse();
    assertThat(isOver(wider, "january-met")).isTrue();
    assertThat(wider.says("restart-in-doubt")).isTrue();
  }

  @Test
  void aFourInchTrunkHoldsAndIsNotTrustedToStart() {
    Looked widest = Looked.at("p6-black-wax-4in");

    assertThat(widest.says("pipe-over-rating")).isFalse();
    assertThat(widest.says("restart-over-rating")).isFalse();
    assertThat(widest.says("restart-in-doubt")).isTrue();
  }

  @Test
  void waterBroughtBackCuresAll() {
    Looked cured = Looked.at("p6-black-wax-water-return");
    LineResult trunk = cured.caseOf("january-met").line("TR").orElseThrow();

    assertThat(trunk.friction().value().toPsi()).isLessThan(1);
    assertThat(trunk.oilCarries()).isFalse();
    assertThat(cured.says("pipe-over-rating")).isFalse();
    assertThat(cured.says("restart-over-rating")).isFalse();
    assertThat(cured.says("restart-in-doubt")).isFalse();
    assertThat(cured.says("no-way-to-separator")).as("the return's tee gathers nothing").isFalse();
  }

  @Test
  void theResultSaysWhichRuleTheSharedTrunkWasTakenBy() {
    Looked base = Looked.at("p6-black-wax");

    assertThat(base.caseOf("january").line("TR").orElseThrow().flowWords())
        .isEqualTo("all its wells together");
    assertThat(base.caseOf("january-met").line("TR").orElseThrow().flowWords())
        .isEqualTo("all its wells together, x 3.0 as if their strokes met");
  }

  private static boolean isOver(Looked lease, String designCase) {
    return lease.caseOf(designCase).lines().stream()
        .anyMatch(l -> l.rating().filter(r -> l.highest().toPsi() + 1.5 > r.toPsi()).isPresent());
  }
}
