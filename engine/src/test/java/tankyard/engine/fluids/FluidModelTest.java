package tankyard.engine.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;
import tankyard.engine.working.Caution;

class FluidModelTest {
  private static final ViscosityPoint AT_40 = point(40, 900);
  private static final ViscosityPoint AT_70 = point(70, 180);
  private static final ViscosityPoint AT_100 = point(100, 60);

  private static ViscosityPoint point(double fahrenheit, double centipoise) {
    return new ViscosityPoint(at(fahrenheit), Viscosity.ofCentipoise(centipoise));
  }

  private static Temperature at(double fahrenheit) {
    return Temperature.ofFahrenheit(fahrenheit);
  }

  private static FluidModel model(ViscosityPoint... measured) {
    return new FluidModel(
        new OilSpec(Gravity.ofApi(26), List.of(measured)),
        new BrineSpec(Gravity.of(1.06, Unit.SPECIFIC_GRAVITY)),
        EmulsionSpec.USUAL);
  }

  private static double centipoise(LiquidState state) {
    return state.viscosity().value().toCentipoise();
  }

  private static List<String> cautions(LiquidState state) {
    return state.cautions().stream().map(Caution::id).toList();
  }

  @Test
  void aColdPointIsAsGoodAsAnyWhereThereIsASecond() {
    LiquidState cold = model(point(0, 5000), AT_40).oil(at(0));
    assertThat(cold.viscosity().value().toCentipoise()).isCloseTo(5000, within(1e-6));
  }

  @Test
  void a_line_of_several_points_passes_through_each() {
    FluidModel model = model(AT_100, AT_40, AT_70);
    assertThat(centipoise(model.oil(at(40)))).isCloseTo(900, within(1e-6));
    assertThat(centipoise(model.oil(at(70)))).isCloseTo(180, within(1e-6));
    assertThat(centipoise(model.oil(at(100)))).isCloseTo(60, within(1e-6));
    assertThat(centipoise(model.oil(at(85)))).isBetween(60.0, 180.0);
    assertThat(cautions(model.oil(at(55)))).isEmpty();
  }

  @Test
  void one_point_is_right_at_the_point_and_says_so_away_from_it() {
    FluidModel model = model(AT_70);
    assertThat(centipoise(model.oil(at(70)))).isCloseTo(180, within(1e-9));
    assertThat(cautions(model.oil(at(70)))).isEmpty();
    assertThat(centipoise(model.oil(at(40)))).isGreaterThan(180);
    assertThat(cautions(model.oil(at(40)))).containsExactly("oil-viscosity-one-point");
  }

  @Test
  void without_a_point_the_guess_is_called_one_and_its_range_is_kept() {
    assertThat(cautions(model().oil(at(70)))).containsExactly("oil-viscosity-not-measured");
    assertThat(cautions(model().oil(at(40))))
        .containsExactlyInAnyOrder("oil-viscosity-out-of-range", "oil-viscosity-not-measured");
  }

  @Test
  void a_measurement_that_thickens_with_heat_is_refused_by_its_numbers() {
    assertThatThrownBy(() -> model(AT_40, point(70, 950)))
        .hasMessageContaining("900 cP at 40 °F")
        .hasMessageContaining("950 cP at 70 °F");
  }

  @ParameterizedTest
  @ValueSource(doubles = {20, 35, 60, 75, 110, 160, 200})
  void printed_workings_give_the_numbers_again(double fahrenheit) {
    for (FluidModel model : List.of(model(), model(AT_70), model(AT_40, AT_70))) {
      for (double cut : new double[] {0, 0.3, 0.7, 1}) {
        LiquidState state = model.mixture(cut, at(fahrenheit));
        double mu = centipoise(state);
        double sg = state.gravity().value().specific();
        assertThat(state.viscosity().working().value()).isCloseTo(mu, within(1e-4 * mu));
        assertThat(state.gravity().working().value()).isCloseTo(sg, within(1e-5));
      }
    }
  }

  /** Ratios as a table of Pal and Rhodes' law gives them, rounded to thousandths. */
  @ParameterizedTest
  @CsvSource({
    "LOOSE, 0.2, 1.733", "MEDIUM, 0.2, 1.884", "TIGHT, 0.2, 2.111",
    "LOOSE, 0.4, 3.516", "MEDIUM, 0.4, 4.417", "TIGHT, 0.4, 6.169",
    "LOOSE, 0.6, 9.475", "MEDIUM, 0.6, 16.292", "TIGHT, 0.6, 42.257"
  })
  void the_tighter_an_emulsion_the_thicker(Tightness tightness, double cut, double thicker) {
    FluidModel model = emulsion(0.9, tightness);
    assertThat(centipoise(model.mixture(cut, at(70))) / centipoise(model.oil(at(70))))
        .isCloseTo(thicker, within(0.0006));
  }

  @Test
  void a_tight_emulsion_is_held_where_it_is_a_hundredfold_and_says_so() {
    FluidModel model = emulsion(0.9, Tightness.TIGHT);
    double held = centipoise(model.mixture(0.65, at(70)));
    assertThat(held / centipoise(model.oil(at(70)))).isCloseTo(100, within(0.5));
    assertThat(centipoise(model.mixture(0.78, at(70)))).isEqualTo(held);
    assertThat(cautions(model.mixture(0.65, at(70)))).doesNotContain("emulsion-out-of-range");
    assertThat(cautions(model.mixture(0.66, at(70)))).contains("emulsion-out-of-range");
  }

  private static FluidModel emulsion(double inversion, Tightness tightness) {
    return new FluidModel(
        new OilSpec(Gravity.ofApi(25), List.of(AT_40, AT_70)),
        new BrineSpec(Gravity.of(1.06, Unit.SPECIFIC_GRAVITY)),
        new EmulsionSpec(Fraction.ofRatio(inversion), Optional.of(tightness)));
  }

  @Test
  void below_the_turning_cut_the_oil_carries_the_water_and_from_it_on_the_water_the_oil() {
    FluidModel model = model(AT_40, AT_70);
    double oil = centipoise(model.oil(at(70)));
    double brine = centipoise(model.brine(at(70)));
    assertThat(centipoise(model.mixture(0.5999, at(70)))).isGreaterThan(7 * oil);
    assertThat(centipoise(model.mixture(0.6, at(70)))).isEqualTo(brine);
    assertThat(cautions(model.mixture(0.55, at(70))))
        .contains("emulsion-out-of-range", "emulsion-near-inversion");
    assertThat(cautions(model.mixture(0.2, at(70)))).isEmpty();
  }

  @Test
  void a_mixture_weighs_its_parts_by_volume() {
    FluidModel model = model(AT_40, AT_70);
    double expected =
        0.25 * model.oil(at(70)).liquid().densityKgPerM3()
            + 0.75 * model.brine(at(70)).liquid().densityKgPerM3();
    assertThat(model.mix(1, 3, at(70)).liquid().densityKgPerM3()).isCloseTo(expected, within(1e-9));
  }

  @Test
  void a_line_in_which_nothing_flows_stands_full_of_brine() {
    assertThat(model().mix(0, 0, at(60)).name()).isEqualTo("brine");
  }

  @Test
  void brine_at_its_reference_has_the_gravity_typed_and_thickens_as_it_cools() {
    FluidModel model = model();
    assertThat(model.brine(at(60)).gravity().value().specific()).isCloseTo(1.06, within(1e-12));
    assertThat(centipoise(model.brine(at(33)))).isGreaterThan(centipoise(model.brine(at(40))));
    assertThat(cautions(model.brine(at(40)))).isEmpty();
    assertThat(cautions(model.brine(at(33)))).containsExactly("brine-salt-ratio-held");
    assertThat(cautions(model.brine(at(240)))).contains("water-temperature-out-of-range");
  }

  @Test
  void brine_says_every_caution_that_holds() {
    BrineSpec heavy = new BrineSpec(Gravity.of(1.25, Unit.SPECIFIC_GRAVITY));
    assertThat(cautions(new Brine(heavy).at(at(240))))
        .containsExactly(
            "water-temperature-out-of-range",
            "brine-gravity-out-of-range",
            "brine-salt-ratio-held");
    BrineSpec fresh = new BrineSpec(Gravity.of(1, Unit.SPECIFIC_GRAVITY));
    assertThat(cautions(new Brine(fresh).at(at(33)))).isEmpty();
    assertThat(cautions(new Brine(fresh).at(at(205)))).isEmpty();
    assertThat(cautions(model().brine(at(200)))).isEmpty();
    assertThat(cautions(model().brine(at(201)))).containsExactly("brine-salt-ratio-held");
  }

  @Test
  void water_too_light_or_too_heavy_for_the_table_is_said() {
    BrineSpec heavy = new BrineSpec(Gravity.of(1.25, Unit.SPECIFIC_GRAVITY));
    assertThat(cautions(new Brine(heavy).at(at(60)))).containsExactly("brine-gravity-out-of-range");
  }
}
