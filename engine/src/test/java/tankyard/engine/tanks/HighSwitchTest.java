package tankyard.engine.tanks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;
import tankyard.engine.units.Volume;

class HighSwitchTest {
  /** A 10-ft tank holds 0.1399 D^2 = 13.99 bbl a foot. */
  private static HighSwitch law(double rate, double hours, double drainBack) {
    return new HighSwitch(
        new RoundTank(Length.ofFeet(10)),
        Length.ofFeet(14.5),
        LiquidRate.ofBarrelsPerDay(rate),
        Time.ofHours(hours),
        Volume.ofBarrels(drainBack));
  }

  @Test
  void leavesRoomForWhatComesWhileTheWellsStop() {
    // 378 bbl/d is 15.75 bbl/h: an hour and a half of it is 23.6 bbl, 1.69 ft.
    assertThat(law(378, 1.5, 0).highest().value().toFeet()).isCloseTo(12.81, within(0.005));
  }

  @Test
  void leavesRoomForWhatDrainsOutOfTheLines() {
    // 3.7 bbl stand in 1000 ft of 2-in line: 0.26 ft.
    assertThat(law(378, 0, 3.7).highest().value().toFeet()).isCloseTo(14.24, within(0.005));
    assertThat(law(0, 1, 0).highest().value().toFeet()).isCloseTo(14.5, within(1e-9));
  }

  @Test
  void saysHowLongAFailedSwitchLeaves() {
    // One foot of a 210 at 378 bbl/d lasts 0.9 h.
    assertThat(law(378, 0, 0).failsIn(Length.ofFeet(13.5)).value().toHours())
        .isCloseTo(0.888, within(0.001));
    assertThat(law(378, 0, 0).failsIn(Length.ofFeet(15)).value().toHours()).isZero();
  }

  @Test
  void aTankTooSmallForWhatComesHasNoHeight() {
    assertThat(law(3000, 3, 0).highest().value().toFeet()).isNegative();
  }
}
