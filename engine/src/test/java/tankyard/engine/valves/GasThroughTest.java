package tankyard.engine.valves;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.fluids.Atmosphere;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;

class GasThroughTest {
  private static final AbsolutePressure AIR = Atmosphere.at(0);
  private static final Temperature T60 = Temperature.ofFahrenheit(60);

  private static double scfh(double cv, double psi, double gravity) {
    return GasThrough.wideOpen(Cv.ofGpmPerRootPsi(cv), Pressure.ofPsi(psi), AIR, gravity, T60)
        .value()
        .in(Unit.CUBIC_FOOT_PER_HOUR);
  }

  /** Under a small drop a gas flows as a liquid of its density does, by the meaning of Cv. */
  @Test
  void aSmallDropMovesGasAsALiquidOfItsDensity() {
    double psi = 0.05;
    double psia = AIR.toPsia() + psi;
    double waterLbPerFt3 = 62.37;
    // Air at 60 degF weighs 0.07636 lb/ft3 at 14.696 psia.
    double gasLbPerFt3 = 0.07636 * psia / 14.696;
    double gpm = 12 * Math.sqrt(psi * waterLbPerFt3 / gasLbPerFt3);
    double actualFt3PerHour = gpm * 60 / 7.480519;

    assertThat(scfh(12, psi, 1)).isCloseTo(actualFt3PerHour * psia / 14.696, withinPercentage(0.5));
  }

  /** The field's rule of thumb for a Cv of 12 at 10 psi: about 290 Mcf/d; by a light gas. */
  @Test
  void aStuckValvePassesWhatTheFieldSays() {
    assertThat(scfh(12, 10, 0.6) * 24 / 1000).isCloseTo(290, withinPercentage(10));
  }

  @Test
  void onceChokedItGrowsWithThePressureBeforeItAlone() {
    double x = 0.91 * 0.70;
    double chokesAt = AIR.toPsia() * x / (1 - x);
    double once = scfh(12, chokesAt, 0.75);
    double twice = scfh(12, 2 * chokesAt + AIR.toPsia(), 0.75);

    assertThat(twice).isCloseTo(2 * once, withinPercentage(1e-9));
  }

  @Test
  void nothingPassesWithoutPressure() {
    assertThat(scfh(12, 0, 0.75)).isCloseTo(0, within(1e-12));
    assertThat(scfh(12, -2, 0.75)).isCloseTo(0, within(1e-12));
  }
}
