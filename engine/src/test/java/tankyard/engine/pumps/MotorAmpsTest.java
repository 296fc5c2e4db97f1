package tankyard.engine.pumps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tankyard.engine.units.Power;
import tankyard.engine.units.Voltage;

/** Amps of motors by their size, against tables of full-load amps at 230 V (from memory). */
class MotorAmpsTest {
  private static double amps(double hp, double volts, MotorSupply.Phases phases) {
    MotorSupply supply = new MotorSupply(Voltage.ofVolts(volts), phases);
    return MotorAmps.of(Power.ofHorsepower(hp), supply).value().amps();
  }

  @ParameterizedTest
  @CsvSource({
    "ONE, 1, 8",
    "ONE, 3, 17",
    "ONE, 10, 50",
    "THREE, 1, 4.2",
    "THREE, 20, 54",
    "THREE, 60, 154"
  })
  void sizesOfTheTableAreRead(MotorSupply.Phases phases, double hp, double amps) {
    assertThat(amps(hp, 230, phases)).isCloseTo(amps, within(1e-9));
  }

  /** The same tables give 77 A for 60 hp at 460 V: half of 154. */
  @Test
  void twiceTheVoltsAreHalfTheAmps() {
    assertThat(amps(60, 460, MotorSupply.Phases.THREE)).isCloseTo(77, within(1e-9));
  }

  @Test
  void betweenTwoSizesAndBeyondThemTheyGrowWithThePower() {
    assertThat(amps(4, 230, MotorSupply.Phases.ONE)).isCloseTo(22.5, within(1e-9));
    assertThat(amps(20, 230, MotorSupply.Phases.ONE)).isCloseTo(100, within(1e-9));
    assertThat(amps(0.25, 230, MotorSupply.Phases.ONE)).isCloseTo(2.45, within(1e-9));
  }
}
