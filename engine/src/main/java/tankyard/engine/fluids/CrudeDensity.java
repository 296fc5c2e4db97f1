package tankyard.engine.fluids;

import java.util.List;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * How oil shrinks as it cools: {@code SG = SG60 exp(-a dT (1 + 0.8 a dT))}, {@code a = 341.0957 /
 * density60^2} per degF. API MPMS chapter 11.1 (1980), table 6A for crude oil; from memory. Range 0
 * to 100 degAPI, 0 to 300 degF.
 */
final class CrudeDensity {
  private static final double CRUDE = 341.0957;
  private static final double COLDEST_F = 0;
  private static final double HOTTEST_F = 300;
  private static final Source SOURCE = Source.memory("API MPMS chapter 11.1 (1980), table 6A");

  private final Gravity at60F;
  private final double perFahrenheit;

  CrudeDensity(Gravity at60F) {
    this.at60F = at60F;
    double density = at60F.specific() * Water.DENSITY_AT_60F;
    perFahrenheit = CRUDE / (density * density);
  }

  Computed<Gravity> at(Temperature temperature) {
    double dT = temperature.toFahrenheit() - 60;
    double shrink = Math.exp(-perFahrenheit * dT * (1 + 0.8 * perFahrenheit * dT));
    Gravity now = Gravity.of(at60F.specific() * shrink, Unit.SPECIFIC_GRAVITY);
    return Computed.of(now, () -> working(temperature)).with(cautions(temperature));
  }

  private Working working(Temperature temperature) {
    return Working.of(
        "Gravity of the oil at this temperature",
        "SG",
        "SG60*2.71828183^(-a*(T-60)*(1+0.8*a*(T-60)))",
        Unit.SPECIFIC_GRAVITY,
        SOURCE,
        Term.of("SG60", "gravity at 60 °F", at60F, Unit.SPECIFIC_GRAVITY),
        Term.number("a", "expansion per °F, 341.0957/density²", perFahrenheit),
        Term.of("T", "temperature", temperature, Unit.FAHRENHEIT));
  }

  private static List<Caution> cautions(Temperature temperature) {
    double fahrenheit = temperature.toFahrenheit();
    if (fahrenheit >= COLDEST_F && fahrenheit <= HOTTEST_F) {
      return List.of();
    }
    return List.of(
        new Caution(
            "oil-density-out-of-range",
            Said.temperature(temperature)
                + " is outside the 0 to 300 °F of the oil's expansion table; check the"
                + " temperature."));
  }
}
