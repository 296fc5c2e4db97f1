package tankyard.engine.vessels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Power;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;

/** What a treater burns, against what a British thermal unit and a barrel are. */
class HeatDutyTest {
  private static final Fraction ALL = Fraction.ofPercent(100);

  private static double btuPerHour(double oil, double water, double from, double to) {
    return HeatDuty.of(
            LiquidRate.ofBarrelsPerDay(oil),
            LiquidRate.ofBarrelsPerDay(water),
            Temperature.ofFahrenheit(from),
            Temperature.ofFahrenheit(to),
            ALL)
        .value()
        .in(Unit.BTU_PER_HOUR);
  }

  /** Definition: 1 Btu warms 1 lb of water by 1 °F; a barrel is 42 gal of 8.337 lb (60 °F). */
  @Test
  void aBarrelOfWaterTakesAsManyBtuAsItWeighsPounds() {
    assertThat(24 * btuPerHour(0, 1, 60, 61)).isCloseTo(42 * 8.337, within(0.5));
  }

  /** Half the heat for a pound: crude near 35 API at 100 °F has 0.49 Btu/lb °F, from memory. */
  @Test
  void aBarrelOfOilTakesHalfTheHeatForEachPound() {
    assertThat(24 * btuPerHour(1, 0, 60, 61)).isCloseTo(0.5 * 42 * 8.337 * 0.85, within(2.0));
  }

  /** By hand: (20·150 + 10·350)·60/24 = 16,250; at 65 % 25,000 Btu/h, 0.6 Mcf/d, 6.56 gal a day. */
  @Test
  void fuelFollowsFromTheHeat() {
    Power duty =
        HeatDuty.of(
                LiquidRate.ofBarrelsPerDay(20),
                LiquidRate.ofBarrelsPerDay(10),
                Temperature.ofFahrenheit(60),
                Temperature.ofFahrenheit(120),
                Fraction.ofPercent(65))
            .value();

    assertThat(duty.in(Unit.BTU_PER_HOUR)).isCloseTo(25_000, within(1e-6));
    assertThat(HeatDuty.gas(duty).value().in(Unit.MCF_PER_DAY)).isCloseTo(0.6, within(1e-9));
    assertThat(HeatDuty.propane(duty, 1).value().in(Unit.GALLON)).isCloseTo(6.557, within(1e-3));
    assertThat(HeatDuty.propane(duty, 30).value().in(Unit.GALLON)).isCloseTo(196.7, within(0.05));
  }

  @Test
  void whatIsWarmEnoughBurnsNothing() {
    assertThat(btuPerHour(20, 10, 130, 120)).isZero();
  }

  @Test
  void anEfficiencyOfNothingIsRefused() {
    assertThatThrownBy(
            () ->
                HeatDuty.of(
                    LiquidRate.ofBarrelsPerDay(1),
                    LiquidRate.ofBarrelsPerDay(1),
                    Temperature.ofFahrenheit(60),
                    Temperature.ofFahrenheit(120),
                    Fraction.ofPercent(0)))
        .hasMessageContaining("not 0.0 %");
  }
}
