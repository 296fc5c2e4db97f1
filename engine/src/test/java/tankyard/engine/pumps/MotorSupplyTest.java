package tankyard.engine.pumps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.Power;
import tankyard.engine.units.Rotation;
import tankyard.engine.units.Unit;

/** The wire to a motor, against tables of wire and motors. */
class MotorSupplyTest {
  private static MotorSupply supply(MotorSupply.Phases phases, MotorSupply.Metal metal, int gauge) {
    return new MotorSupply(240, phases, metal, gauge, Length.ofFeet(800));
  }

  private static MotorSupply single(int gauge) {
    return supply(MotorSupply.Phases.ONE, MotorSupply.Metal.ALUMINIUM, gauge);
  }

  /** Circular mils of the wire tables (American wire gauge, ASTM B258; from memory). */
  @Test
  void wiresHaveTheAreaOfTheTables() {
    assertThat(single(14).circularMils()).isCloseTo(4_110, within(5.0));
    assertThat(single(4).circularMils()).isCloseTo(41_740, within(10.0));
    assertThat(single(0).circularMils()).isCloseTo(105_600, within(100.0));
    assertThat(single(-3).circularMils()).isCloseTo(211_600, within(100.0));
  }

  /**
   * By hand, with the 28 A that motor tables give 5 hp on one phase of 230 V (from memory): 2 x
   * 21.2 x 28 x 800/41,740 = 22.75 V of 240.
   */
  @Test
  void fiveHorsepowerAtEightHundredFeetOnNumberFourAluminiumLosesNineAndAHalfPercent() {
    assertThat(single(4).drop(28).value().toPercent()).isCloseTo(9.5, within(0.05));
  }

  @Test
  void threePhasesLoseRootThreeInPlaceOfTwoAndCopperLessThanAluminium() {
    double one = single(4).drop(20).value().ratio();
    MotorSupply three = supply(MotorSupply.Phases.THREE, MotorSupply.Metal.ALUMINIUM, 4);
    MotorSupply copper = supply(MotorSupply.Phases.ONE, MotorSupply.Metal.COPPER, 4);

    assertThat(three.drop(20).value().ratio() / one).isCloseTo(Math.sqrt(3) / 2, within(1e-12));
    assertThat(copper.drop(20).value().ratio() / one).isCloseTo(12.9 / 21.2, within(1e-12));
  }

  /** By hand: 7457 W/(1.732 x 240 x 0.9 x 0.85) = 23.45 A. */
  @Test
  void ampsFollowFromPower() {
    MotorSupply three = supply(MotorSupply.Phases.THREE, MotorSupply.Metal.COPPER, 6);
    double amps =
        three
            .running(Power.ofHorsepower(10), Fraction.ofPercent(90), Fraction.ofPercent(85))
            .value()
            .ratio();

    assertThat(amps).isCloseTo(23.45, within(0.01));
    assertThat(MotorSupply.starting(amps).value().ratio()).isCloseTo(6 * amps, within(1e-9));
  }

  @Test
  void whatIsNoWireIsRefused() {
    assertThatThrownBy(() -> single(15)).hasMessageContaining("15 is not between 14 and -3");
    assertThatThrownBy(() -> single(-4)).hasMessageContaining("-4");
  }

  /** A belt: 18 in at 300 rpm is 3.086 in at 1750. */
  @Test
  void theMotorsSheaveIsSmallerAsItTurnsFaster() {
    Length sheave =
        PlungerPump.motorSheave(Length.ofInches(18), Rotation.ofRpm(300), Rotation.ofRpm(1750))
            .value();

    assertThat(sheave.in(Unit.INCH)).isCloseTo(3.0857, within(1e-4));
  }
}
