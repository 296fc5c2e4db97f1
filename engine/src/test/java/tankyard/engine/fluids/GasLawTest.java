package tankyard.engine.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;

class GasLawTest {
  private static final Temperature COOL = Temperature.ofFahrenheit(60);
  private static final Temperature WARM = Temperature.ofFahrenheit(120);
  private static final AbsolutePressure SEPARATOR = AbsolutePressure.ofPsia(44.7);

  @Test
  void the_root_fits_the_equation_of_state_to_machine_accuracy() {
    for (double tr = 1.05; tr <= 3; tr += 0.05) {
      DranchukAbouKassem law = new DranchukAbouKassem(tr);
      for (double pr = 0.01; pr <= 30; pr *= 1.3) {
        double z = law.z(pr);
        double put = law.zAtDensity(0.27 * pr / (z * tr));
        assertThat(put).as("Tr %s, Pr %s", tr, pr).isCloseTo(z, within(1e-12 * z));
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void thin_gas_is_ideal(ZLaw law) {
    assertThat(law.at(1.4, 0)).isCloseTo(1, within(1e-12));
    assertThat(law.at(1.4, 1e-6)).isCloseTo(1, within(1e-6));
  }

  @Test
  void both_laws_agree_where_leases_run() {
    for (double pr = 0.02; pr < 1; pr += 0.02) {
      double eos = ZLaw.DRANCHUK_ABOU_KASSEM.at(1.4, pr);
      assertThat(ZLaw.BRILL_BEGGS.at(1.4, pr)).isCloseTo(eos, withinPercentage(1));
    }
  }

  @Test
  void each_law_covers_its_own_span_ends_included() {
    assertThat(ZLaw.BRILL_BEGGS.covers(2.4, 13)).isTrue();
    assertThat(ZLaw.BRILL_BEGGS.covers(2.41, 1)).isFalse();
    assertThat(ZLaw.BRILL_BEGGS.covers(1.14, 1)).isFalse();
    assertThat(ZLaw.DRANCHUK_ABOU_KASSEM.covers(3, 30)).isTrue();
    assertThat(ZLaw.DRANCHUK_ABOU_KASSEM.covers(3.01, 1)).isFalse();
  }

  @Test
  void a_cool_heavy_gas_takes_the_gas_root() {
    double z = ZLaw.DRANCHUK_ABOU_KASSEM.at(0.8, 0.1);
    assertThat(z).isBetween(0.85, 1.0);
  }

  @ParameterizedTest
  @EnumSource
  void the_workings_print_what_was_computed(ZLaw law) {
    GasState state = new GasModel(new GasSpec(0.75, law)).state(SEPARATOR, WARM);
    assertThat(state.z().working().value())
        .isCloseTo(state.z().value().ratio(), withinPercentage(1e-4));
    assertThat(state.densityWorking().value())
        .isCloseTo(
            Unit.POUND_PER_CUBIC_FOOT.fromSi(state.gas().densityKgPerM3()), withinPercentage(1e-4));
    assertThat(state.viscosity().working().value())
        .isCloseTo(state.viscosity().value().toCentipoise(), withinPercentage(1e-4));
  }

  @Test
  void a_gas_out_of_range_is_said() {
    GasState warm = new GasModel(GasSpec.ofGravity(0.75)).state(SEPARATOR, WARM);
    assertThat(warm.cautions()).isEmpty();
    GasState cool = new GasModel(GasSpec.ofGravity(1.9)).state(SEPARATOR, COOL);
    assertThat(cool.cautions())
        .extracting(Caution::id)
        .contains("gas-gravity-out-of-range", "gas-viscosity-out-of-range");
    GasState squeezed =
        new GasModel(GasSpec.ofGravity(1.6)).state(AbsolutePressure.ofPsia(900), COOL);
    assertThat(squeezed.cautions()).extracting(Caution::id).contains("gas-z-out-of-range");
  }

  @Test
  void standard_density_is_the_weight_of_air_times_the_gravity() {
    double air = new GasModel(GasSpec.ofGravity(1)).standardDensityKgPerM3();
    assertThat(Unit.POUND_PER_CUBIC_FOOT.fromSi(air)).isCloseTo(0.0763, within(5e-5));
  }

  @Test
  void gauge_and_absolute_differ_by_the_air() {
    AbsolutePressure air = Atmosphere.at(0);
    AbsolutePressure separator = AbsolutePressure.of(Pressure.ofPsi(30), air);
    assertThat(separator.toPsia()).isCloseTo(44.696, within(0.001));
    assertThat(Unit.PSI.fromSi(separator.gaugePascals(air))).isCloseTo(30, within(1e-9));
    assertThatThrownBy(() -> new AbsolutePressure(-5)).hasMessageContaining("gauge");
  }

  @ParameterizedTest
  @CsvSource({"50", "500", "2603", "2604", "3000"})
  void live_oil_workings_print_what_was_computed(double psia) {
    LiveOil oil = new LiveOil(OilSpec.ofGravity(Gravity.ofApi(35)), 0.8, 650);
    var viscosity = oil.viscosity(AbsolutePressure.ofPsia(psia), Temperature.ofFahrenheit(200));
    assertThat(viscosity.working().value())
        .isCloseTo(viscosity.value().toCentipoise(), withinPercentage(1e-3));
  }

  @Test
  void oil_is_thinnest_at_its_bubble_point_without_a_jump() {
    LiveOil oil = new LiveOil(OilSpec.ofGravity(Gravity.ofApi(35)), 0.8, 650);
    Temperature hot = Temperature.ofFahrenheit(200);
    double bubble = oil.bubblePointPascals(hot);
    double below = at(oil, bubble * (1 - 1e-9), hot);
    assertThat(at(oil, bubble * (1 + 1e-9), hot)).isCloseTo(below, withinPercentage(1e-5));
    assertThat(at(oil, bubble / 2, hot)).isGreaterThan(below);
    assertThat(at(oil, bubble * 2, hot)).isGreaterThan(below);
  }

  @Test
  void oil_without_gas_is_dead_oil() {
    LiveOil oil = new LiveOil(OilSpec.ofGravity(Gravity.ofApi(35)), 0.8, 0);
    Temperature hot = Temperature.ofFahrenheit(200);
    double dead = new BeggsRobinsonDead(35).at(hot).value().toCentipoise();
    assertThat(at(oil, 1e6, hot)).isCloseTo(dead, withinPercentage(0.2));
  }

  private static double at(LiveOil oil, double pascals, Temperature temperature) {
    return oil.viscosity(new AbsolutePressure(pascals), temperature).value().toCentipoise();
  }
}
