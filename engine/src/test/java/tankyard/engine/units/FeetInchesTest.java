package tankyard.engine.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FeetInchesTest {

  @Test
  void aHeightReadsAsOnATape() {
    assertThat(FeetInches.print(Length.ofFeet(16.41))).isEqualTo("16 ft 5 in");
    assertThat(FeetInches.print(Length.ofFeet(16 + 4.75 / 12))).isEqualTo("16 ft 4 3/4 in");
    assertThat(FeetInches.print(Length.ofFeet(18))).isEqualTo("18 ft");
    assertThat(FeetInches.print(Length.ofInches(3.26))).isEqualTo("3 1/4 in");
    assertThat(FeetInches.print(Length.ofInches(0.2))).isEqualTo("1/4 in");
    assertThat(FeetInches.print(Length.ofInches(0))).isEqualTo("0 in");
    assertThat(FeetInches.print(Length.ofInches(-13.5))).isEqualTo("-1 ft 1 1/2 in");
  }

  @Test
  void justUnderAFootIsAFoot() {
    assertThat(FeetInches.print(Length.ofFeet(2.999))).isEqualTo("3 ft");
  }
}
