package tankyard.engine.fluids;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Viscosity;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;

/** A law speaks outside its published range, and is silent up to the very end of it. */
class RangesTest {
  private static Temperature at(double fahrenheit) {
    return Temperature.ofFahrenheit(fahrenheit);
  }

  private static List<String> said(Computed<?> result) {
    return result.cautions().stream().map(Caution::id).toList();
  }

  private static void assertSaid(Computed<?> result, String id, boolean outside) {
    if (outside) {
      assertThat(said(result)).contains(id);
    } else {
      assertThat(said(result)).doesNotContain(id);
    }
  }

  @ParameterizedTest
  @CsvSource({"58.9, true", "59, false", "176, false", "176.1, true"})
  void ngAndEgbogahByTemperature(double fahrenheit, boolean outside) {
    assertSaid(new NgEgbogah(25).at(at(fahrenheit)), "oil-viscosity-out-of-range", outside);
  }

  @ParameterizedTest
  @CsvSource({"4.9, true", "5, false", "58, false", "58.1, true"})
  void ngAndEgbogahByGravity(double api, boolean outside) {
    assertSaid(new NgEgbogah(api).at(at(80)), "oil-gravity-out-of-range", outside);
  }

  @ParameterizedTest
  @CsvSource({"99.9, true", "100, false", "295, false", "295.1, true"})
  void beggsAndRobinsonByTemperature(double fahrenheit, boolean outside) {
    assertSaid(new BeggsRobinsonDead(25).at(at(fahrenheit)), "dead-oil-out-of-range", outside);
  }

  @ParameterizedTest
  @CsvSource({"15.9, true", "16, false", "58, false", "58.1, true"})
  void beggsAndRobinsonByGravity(double api, boolean outside) {
    assertSaid(new BeggsRobinsonDead(api).at(at(120)), "dead-oil-gravity-out-of-range", outside);
  }

  @ParameterizedTest
  @CsvSource({"-0.1, true", "0, false", "300, false", "300.1, true"})
  void theExpansionOfCrude(double fahrenheit, boolean outside) {
    CrudeDensity crude = new CrudeDensity(Gravity.ofApi(30));
    assertSaid(crude.at(at(fahrenheit)), "oil-density-out-of-range", outside);
  }

  /** All of it is dissolved above the bubble point, so what is typed is what the law sees. */
  @ParameterizedTest
  @CsvSource({"0, false", "19.9, true", "20, false", "2070, false", "2071, true"})
  void gasInTheOil(double scfPerBbl, boolean outside) {
    LiveOil oil = new LiveOil(new OilSpec(Gravity.ofApi(35), List.of()), 0.75, scfPerBbl);
    assertSaid(
        oil.viscosity(AbsolutePressure.ofPsia(20_000), at(120)),
        "solution-gas-out-of-range",
        outside);
  }

  /** 1.7 and 1.6 cP over 0.83 g/cm3 are 2.05 and 1.93 cSt, either side of where the line bends. */
  @ParameterizedTest
  @CsvSource({"1.7, false", "1.6, true"})
  void theLineThroughTwoPointsWhereOilIsThin(double centipoise, boolean outside) {
    WaltherLine line =
        new WaltherLine(
            new CrudeDensity(Gravity.ofApi(39)),
            new ViscosityPoint(at(40), Viscosity.ofCentipoise(9)),
            new ViscosityPoint(at(60), Viscosity.ofCentipoise(centipoise)));
    assertSaid(line.at(at(60)), "oil-viscosity-thin", outside);
  }
}
