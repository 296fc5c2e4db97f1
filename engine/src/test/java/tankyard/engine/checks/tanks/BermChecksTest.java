package tankyard.engine.checks.tanks;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;

/** The wall round the tanks. */
class BermChecksTest {
  private static final Looked P3 = Looked.at("p3-coyote-creek");
  private static final String HEIGHT = "/site/berm/height";

  @Test
  void aBermToBuildIsGivenItsHeightAndTheNextQuarterFoot() {
    Finding found = P3.the("berm-height");
    double needed = P3.evidence().yard().berm().orElseThrow().needed().value().toFeet();

    assertThat(found.severity()).isEqualTo(Severity.NOTE);
    assertThat(found.words())
        .contains(String.format("%.2f ft", needed))
        .contains("build it to 1.25 ft");
    assertThat(P3.with(HEIGHT, "2 ft").says("berm-height")).isFalse();
  }

  @Test
  void aBermLowerThanNeededIsToBeRaised() {
    double needed = P3.evidence().yard().berm().orElseThrow().needed().value().toFeet();

    assertThat(P3.says("berm-too-low")).isFalse();
    assertThat(P3.with(HEIGHT, needed, "ft").says("berm-too-low")).isFalse();
    assertThat(P3.with(HEIGHT, needed + 0.01, "ft").says("berm-too-low")).isFalse();
    assertThat(P3.with(HEIGHT, "1 ft").the("berm-too-low").severity()).isEqualTo(Severity.FIX);
    assertThat(P3.with(HEIGHT, "1 ft").the("berm-too-low").words()).contains("The berm is 1 ft");
  }

  @Test
  void tanksWithNoBermDrawnAreLookedAt() {
    assertThat(Looked.at("p1-osage-bend").the("berm-missing").thingId()).isEmpty();
    assertThat(P3.says("berm-missing")).isFalse();
  }

  @Test
  void aTankOnTheWallsLineIsInsideAndOneBeyondItIsNot() {
    // The pad runs from 20 to 80 ft east.
    assertThat(P3.with("/tanks/0/at/east", "80 ft").says("berm-missing")).isFalse();
    assertThat(P3.with("/tanks/0/at/east", "20 ft").says("berm-missing")).isFalse();
    assertThat(P3.with("/tanks/0/at/east", "80.1 ft").the("berm-missing").thingId())
        .isEqualTo(P3.evidence().lease().tanks().get(0).id());
  }
}
