package tankyard.engine.checks.tanks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;

/** The wall round the tanks. */
class BermChecksTest {
  private static final Looked P3 = Looked.at("p3-coyote-creek");

  /** The same with its separator set among the tanks. */
  private static final Looked INSIDE =
      P3.with("/separators/0/at", Map.of("east", "50 ft", "north", "0 ft"));

  private static final String HEIGHT = "/berms/0/height";

  @Test
  void aBermToBuildIsGivenItsHeightAndTheNextQuarterFoot() {
    Finding found = P3.the("berm-height");
    double needed = P3.evidence().yard().berms().get(0).needed().value().toFeet();

    assertThat(found.severity()).isEqualTo(Severity.NOTE);
    assertThat(found.words())
        .contains(String.format("%.2f ft", Math.ceil(needed * 100) / 100))
        .contains("build it to 1.25 ft");
    assertThat(P3.with(HEIGHT, "2 ft").says("berm-height")).isFalse();
  }

  @Test
  void aBermLowerThanNeededIsToBeRaised() {
    double needed = P3.evidence().yard().berms().get(0).needed().value().toFeet();

    assertThat(P3.says("berm-too-low")).isFalse();
    assertThat(P3.with(HEIGHT, needed, "ft").says("berm-too-low")).isFalse();
    assertThat(P3.with(HEIGHT, needed + 0.01, "ft").says("berm-too-low")).isFalse();
    assertThat(P3.with(HEIGHT, "1 ft").the("berm-too-low").severity()).isEqualTo(Severity.FIX);
    assertThat(P3.with(HEIGHT, "1 ft").the("berm-too-low").words()).contains("Berm is 1 ft");
  }

  /** A rain of nothing is a rain somebody thought of; an empty field is not. */
  @Test
  void aBermSizedForNoRainSaysSo() {
    Looked dry = P3.with("/berms/0/rain", null);
    assertThat(dry.the("berm-rain-not-typed").severity()).isEqualTo(Severity.LOOK);
    assertThat(dry.the("berm-height").words()).contains(" alone: build it").doesNotContain("rain");
    Looked typed = P3.with("/berms/0/rain", "0 in");
    assertThat(typed.says("berm-rain-not-typed")).isFalse();
    assertThat(typed.the("berm-height").words()).contains("and the rain");
    assertThat(dry.evidence().assumptions()).anyMatch(a -> a.words().contains("rain"));
  }

  @Test
  void tanksWithNoBermDrawnAreLookedAt() {
    assertThat(Looked.at("p1-osage-bend").the("berm-missing").thingId()).isEmpty();
    assertThat(INSIDE.says("berm-missing")).isFalse();
  }

  @Test
  void aTankOnTheWallsLineIsInsideAndOneBeyondItIsNot() {
    // The pad runs from 20 to 80 ft east.
    assertThat(INSIDE.with("/tanks/0/at/east", "80 ft").says("berm-missing")).isFalse();
    assertThat(INSIDE.with("/tanks/0/at/east", "20 ft").says("berm-missing")).isFalse();
    assertThat(INSIDE.with("/tanks/0/at/east", "80.1 ft").the("berm-missing").thingId())
        .isEqualTo(P3.evidence().lease().tanks().get(0).id());
  }

  @Test
  void aSeparatorBelongsInsideToo() {
    String id = P3.evidence().lease().separators().get(0).id();
    assertThat(INSIDE.with("/separators/0/at/east", "19.9 ft").the("berm-missing").thingId())
        .isEqualTo(id);
  }

  /** Two of its four corners taken in the wrong order make a bow tie of no inside. */
  @Test
  void aBermWhoseSidesCrossIsToBeDrawnAnew() {
    assertThat(P3.says("berm-crossed")).isFalse();
    Looked crossed =
        P3.with("/berms/0/corners/1/north", "22 ft").with("/berms/0/corners/2/north", "-22 ft");
    assertThat(crossed.the("berm-crossed").severity()).isEqualTo(Severity.FIX);
    assertThat(crossed.evidence().yard().berms()).isEmpty();
    assertThat(P3.with("/berms/0/status", "remove").says("berm-height")).isFalse();
  }

  /** A fifth corner, 22 ft out in the middle of the east side, adds a triangle of 484 ft2. */
  @Test
  void aPadOfAnotherShapeHoldsByItsOwnGround() {
    Map<String, Object> nose = Map.of("east", "102 ft", "north", "0 ft");
    List<Object> corners =
        List.of(
            Map.of("east", "20 ft", "north", "-22 ft"),
            Map.of("east", "80 ft", "north", "-22 ft"),
            nose,
            Map.of("east", "80 ft", "north", "22 ft"),
            Map.of("east", "20 ft", "north", "22 ft"));
    Looked five = P3.with("/berms/0/corners", corners);
    assertThat(P3.evidence().yard().berms().get(0).inside().toSquareFeet())
        .isCloseTo(60 * 44, within(1e-6));
    assertThat(five.evidence().yard().berms().get(0).inside().toSquareFeet())
        .isCloseTo(60 * 44 + 484, within(1e-6));
    assertThat(five.evidence().yard().berms().get(0).needed().value().toFeet())
        .isLessThan(P3.evidence().yard().berms().get(0).needed().value().toFeet());
  }
}
