package tankyard.engine.vessels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Volume;

class RetentionTest {
  @Test
  void a_day_s_volume_stays_a_day() {
    assertThat(
            Retention.of(Volume.ofBarrels(300), LiquidRate.ofBarrelsPerDay(300))
                .value()
                .toMinutes())
        .isCloseTo(1440, within(1e-9));
  }

  @Test
  void without_a_rate_there_is_no_time() {
    assertThatThrownBy(() -> Retention.of(Volume.ofBarrels(1), LiquidRate.ofBarrelsPerDay(0)))
        .hasMessageContaining("no retention time");
  }

  /** API Spec 12J appendix C, from memory. */
  @ParameterizedTest
  @CsvSource({"38, 50, 3, 5", "30, 110, 5, 10", "30, 90, 10, 20", "30, 65, 20, 30"})
  void the_guide_asks_more_of_heavy_and_cold_oil(
      double api, double fahrenheit, double lowest, double highest) {
    Retention.Guide guide =
        Retention.Guide.of(Gravity.ofApi(api), Temperature.ofFahrenheit(fahrenheit));
    assertThat(guide.lowest()).isEqualTo(lowest);
    assertThat(guide.highest()).isEqualTo(highest);
    assertThat(guide.cautions()).isEmpty();
  }

  @Test
  void colder_than_the_guide_is_said() {
    assertThat(Retention.Guide.of(Gravity.ofApi(30), Temperature.ofFahrenheit(40)).cautions())
        .hasSize(1);
  }
}
