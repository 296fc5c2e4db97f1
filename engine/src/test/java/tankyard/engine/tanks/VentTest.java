package tankyard.engine.tanks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

class VentTest {
  private static final Pressure OPEN = Pressure.ofPsi(0);

  private static LiquidRate barrelsAnHour(double rate) {
    return LiquidRate.of(rate, Unit.BARREL_PER_HOUR);
  }

  private static GasRate scfh(double rate) {
    return GasRate.of(rate, Unit.CUBIC_FOOT_PER_HOUR);
  }

  private static Computed<GasRate> gas(double rate) {
    return Computed.of(
        scfh(rate),
        () ->
            Working.of(
                "Gas",
                "G",
                "x",
                Unit.CUBIC_FOOT_PER_HOUR,
                Source.definition("given"),
                Term.of("x", "gas", rate, Unit.CUBIC_FOOT_PER_HOUR)));
  }

  /** API Std 2000's simple rule as a standards page restates it; table 2A of the 5th recalled. */
  @ParameterizedTest
  @CsvSource({
    // drawn bbl/h, filled bbl/h, shell bbl, flashes below 100 F, in scfh, out scfh
    "100, 0, 0, false, 560, 0",
    "0, 100, 0, false, 0, 600",
    "0, 100, 0, true, 0, 1200",
    "0, 0, 500, false, 500, 300",
    "0, 0, 500, true, 500, 500",
    "0, 0, 1000, false, 1000, 600",
    "0, 0, 3000, true, 3000, 3000",
  })
  void breathesByTheSimpleRule(
      double drawn, double filled, double shell, boolean flashes, double in, double out) {
    Volume barrels = Volume.ofBarrels(shell);

    assertThat(Breathing.in(barrelsAnHour(drawn), barrels).value().in(Unit.CUBIC_FOOT_PER_HOUR))
        .isCloseTo(in, within(1e-6));
    assertThat(
            Breathing.out(barrelsAnHour(filled), barrels, flashes, gas(0))
                .value()
                .in(Unit.CUBIC_FOOT_PER_HOUR))
        .isCloseTo(out, within(1e-6));
  }

  @Test
  void gasThatComesInGoesOut() {
    assertThat(
            Breathing.out(barrelsAnHour(10), Volume.ofBarrels(200), true, gas(5000))
                .value()
                .in(Unit.CUBIC_FOOT_PER_HOUR))
        .isCloseTo(120 + 200 + 5000, within(1e-6));
  }

  /**
   * Air of 0.075 lb/ft3 moves at 4,005 ft/min under an inch of water (the velocity pressure of
   * ventilation handbooks, from memory); ours is 1.8 % heavier and so 0.9 % slower.
   */
  @Test
  void anInchOfWaterDrivesAirAsInAirDucts() {
    double bore = 4;
    double areaFt2 = Math.PI / 4 * bore * bore / 144;
    double scfh = 0.6 * areaFt2 * 4005 * 60;
    Pressure across = new RoofVent(Length.ofInches(bore), OPEN).across(scfh(scfh)).value();

    assertThat(across.in(Unit.INCH_OF_WATER)).isCloseTo(1, withinPercentage(2.2));
  }

  @Test
  void whatItLiftsAtComesOnTop() {
    Length bore = Length.ofInches(3);
    Pressure lifts = Pressure.of(0.4, Unit.OUNCE_PER_SQUARE_INCH);
    double open = new RoofVent(bore, OPEN).across(scfh(2000)).value().pascals();

    assertThat(new RoofVent(bore, lifts).across(scfh(2000)).value().pascals())
        .isCloseTo(open + lifts.pascals(), within(1e-9));
    assertThat(new RoofVent(bore, lifts).across(scfh(0)).value().pascals())
        .isCloseTo(lifts.pascals(), within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"500, 0.1", "2000, 0.5", "12000, 4"})
  void theLeastBoreUsesTheRoomUpAndNoMore(double rate, double ounces) {
    Pressure room = Pressure.of(ounces, Unit.OUNCE_PER_SQUARE_INCH);
    Length bore = RoofVent.leastBore(scfh(rate), room).value();

    assertThat(new RoofVent(bore, OPEN).across(scfh(rate)).value().pascals())
        .isCloseTo(room.pascals(), withinPercentage(1e-9));
  }

  @Test
  void aVentWithoutABoreIsNone() {
    assertThatThrownBy(() -> new RoofVent(Length.ofInches(0), OPEN))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
