package tankyard.engine.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tankyard.engine.units.Temperature;

/** Values worked out from the published formulas once more, outside the project. */
class DeadOilBandTest {

  @ParameterizedTest
  @CsvSource({
    "20, 60, 201.138, 194.354, 229.146",
    "25, 80, 31.307, 27.772, 37.291",
    "25, 120, 14.236, 13.472, 17.196",
    "35, 40, 16.611, 15.25, 14.15"
  })
  void eachCorrelationGivesItsPublishedFormula(
      double api, double fahrenheit, double glaso, double ngEgbogah, double beal) {
    assertThat(DeadOilBand.glaso(api, fahrenheit)).isCloseTo(glaso, within(6e-4));
    assertThat(NgEgbogah.centipoise(api, fahrenheit)).isCloseTo(ngEgbogah, within(6e-4));
    assertThat(DeadOilBand.beal(api, fahrenheit)).isCloseTo(beal, within(6e-4));
  }

  @Test
  void theBandHoldsWhatIsTakenAndWidensInTheCold() {
    DeadOilBand cold = DeadOilBand.of(20, Temperature.ofFahrenheit(40));
    DeadOilBand warm = DeadOilBand.of(20, Temperature.ofFahrenheit(80));

    assertThat(NgEgbogah.centipoise(20, 40)).isBetween(cold.low(), cold.high());
    assertThat(cold.high() / cold.low()).isGreaterThan(warm.high() / warm.low());
  }

  @Test
  void beggsAndRobinsonCountOnlyFromAHundredDegrees() {
    assertThat(DeadOilBand.of(20, Temperature.ofFahrenheit(99)).high()).isLessThan(90);
    assertThat(DeadOilBand.of(20, Temperature.ofFahrenheit(100)).high())
        .isCloseTo(99.821, within(6e-4));
  }

  @Test
  void theCautionSaysTheBand() {
    assertThat(
            new NgEgbogah(20)
                .at(Temperature.ofFahrenheit(40)).cautions().stream()
                    .filter(c -> c.id().equals("oil-viscosity-not-measured"))
                    .findFirst()
                    .orElseThrow()
                    .words())
        .contains("at 40 °F published correlations say 400 to 760 cP");
  }
}
