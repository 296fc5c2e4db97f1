package tankyard.engine.fluids;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Dead oil by Beggs and Robinson 1975: {@code mu = 10^x - 1}, {@code x = T^-1.163 10^(3.0324 -
 * 0.02023 API)}, cP and degF. 16 to 58 degAPI, 70 to 295 degF; much too thick when cold.
 */
final class BeggsRobinsonDead implements ViscosityLaw {
  private static final Source SOURCE =
      Source.published("Beggs and Robinson 1975 (constants and range as given in an open library)");

  /** Colder than this the law runs away. */
  private static final double COLD_F = 100;

  private static final double HOTTEST_F = 295;

  private final double api;

  BeggsRobinsonDead(double api) {
    this.api = api;
  }

  @Override
  public Computed<Viscosity> at(Temperature temperature) {
    double fahrenheit = Math.max(temperature.toFahrenheit(), NgEgbogah.HELD_BELOW_F);
    double x = Math.pow(fahrenheit, -1.163) * Math.pow(10, 3.0324 - 0.02023 * api);
    return Computed.of(Viscosity.ofCentipoise(Math.pow(10, x) - 1), () -> working(fahrenheit))
        .with(cautions(temperature));
  }

  private Working working(double fahrenheit) {
    return Working.of(
        "Viscosity of the oil without gas",
        "mu",
        "10^(10^(3.0324-0.02023*API)/T^1.163)-1",
        Unit.CENTIPOISE,
        SOURCE,
        Term.of("API", "gravity of the oil", api, Unit.DEGREE_API),
        Term.of("T", "temperature", fahrenheit, Unit.FAHRENHEIT));
  }

  private List<Caution> cautions(Temperature temperature) {
    List<Caution> said = new ArrayList<>();
    if (temperature.toFahrenheit() < COLD_F || temperature.toFahrenheit() > HOTTEST_F) {
      said.add(
          new Caution(
              "dead-oil-out-of-range",
              Said.temperature(temperature)
                  + " is outside the 100 to 295 °F where this viscosity law can be used: type two"
                  + " measured viscosities."));
    }
    if (api < 16 || api > 58) {
      said.add(
          new Caution(
              "dead-oil-gravity-out-of-range",
              Said.api(api)
                  + " is outside the 16 to 58 °API of this viscosity law: type two measured"
                  + " viscosities."));
    }
    return said;
  }
}
