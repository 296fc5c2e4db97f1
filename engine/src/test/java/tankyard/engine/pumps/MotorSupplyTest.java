package tankyard.engine.pumps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.units.Current;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.Power;
import tankyard.engine.units.Rotation;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Voltage;

/** The wire to a motor, against tables of wire and motors. */
class MotorSupplyTest {
  private static final MotorSupply ONE =
      new MotorSupply(Voltage.ofVolts(240), MotorSupply.Phases.ONE);
  private static final MotorSupply THREE =
      new MotorSupply(Voltage.ofVolts(240), MotorSupply.Phases.THREE);

  private static MotorSupply.Wire wire(MotorSupply.Metal metal, int gauge) {
    return new MotorSupply.Wire(metal, gauge, Length.ofFeet(800));
  }

  private static MotorSupply.Wire aluminium(int gauge) {
    return wire(MotorSupply.Metal.ALUMINIUM, gauge);
  }

  private static double drop(MotorSupply supply, MotorSupply.Wire wire, double amps) {
    return supply.drop(wire, Current.ofAmps(amps)).value().ratio();
  }

  /** Circular mils of the wire tables (American wire gauge, ASTM B258; from memory). */
  @Test
  void wiresHaveTheAreaOfTheTables() {
    assertThat(aluminium(14).circularMils()).isCloseTo(4_110, within(5.0));
    assertThat(aluminium(4).circularMils()).isCloseTo(41_740, within(10.0));
    assertThat(aluminium(0).circularMils()).isCloseTo(105_600, within(100.0));
    assertThat(aluminium(-3).circularMils()).isCloseTo(211_600, within(100.0));
  }

  /**
   * By hand, with the 28 A that motor tables give 5 hp on one phase of 230 V (from memory): 2 x
   * 21.2 x 28 x 800/41,740 = 22.75 V of 240.
   */
  @Test
  void fiveHorsepowerAtEightHundredFeetOnNumberFourAluminiumLosesNineAndAHalfPercent() {
    assertThat(100 * drop(ONE, aluminium(4), 28)).isCloseTo(9.5, within(0.05));
  }

  @Test
  void threePhasesLoseRootThreeInPlaceOfTwoAndCopperLessThanAluminium() {
    double one = drop(ONE, aluminium(4), 20);

    assertThat(drop(THREE, aluminium(4), 20) / one).isCloseTo(Math.sqrt(3) / 2, within(1e-12));
    assertThat(drop(ONE, wire(MotorSupply.Metal.COPPER, 4), 20) / one)
        .isCloseTo(12.9 / 21.2, within(1e-12));
  }

  /** By hand: 7457 W/(1.732 x 240 x 0.9 x 0.85) = 23.45 A. */
  @Test
  void ampsFollowFromPower() {
    Current amps =
        THREE
            .running(Power.ofHorsepower(10), Fraction.ofPercent(90), Fraction.ofPercent(85))
            .value();

    assertThat(amps.amps()).isCloseTo(23.45, within(0.01));
    assertThat(MotorSupply.starting(amps).value().amps()).isCloseTo(6 * amps.amps(), within(1e-9));
  }

  @Test
  void whatIsNoWireIsRefused() {
    assertThatThrownBy(() -> aluminium(15)).hasMessageContaining("15 is not between 14 and -3");
    assertThatThrownBy(() -> aluminium(-4)).hasMessageContaining("-4");
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
