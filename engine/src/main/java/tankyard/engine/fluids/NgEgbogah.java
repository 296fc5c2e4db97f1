package tankyard.engine.fluids;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Dead oil from its gravity alone: {@code log10 log10(mu + 1) = 1.8653 - 0.025086 API - 0.5644
 * log10 T}, mu in cP, T in degF. Ng and Egbogah 1983 (394 oils; 5 to 58 degAPI, 59 to 176 degF),
 * the one of the common correlations that was made for surface temperatures. Cold heavy oil can be
 * off by a factor of several: correlations disagree there by 2 to 20 times.
 */
final class NgEgbogah implements ViscosityLaw {
  static final double INTERCEPT = 1.8653;
  static final double PER_API = 0.025086;
  static final double PER_LOG_T = 0.5644;

  /** The law is in degF and has no meaning near 0 degF; below this it is held. */
  static final double HELD_BELOW_F = 14;

  private static final double COLDEST_F = 59;
  private static final double HOTTEST_F = 176;
  private static final double HEAVIEST_API = 5;
  private static final double LIGHTEST_API = 58;
  private static final Source SOURCE =
      Source.published("Ng and Egbogah 1983 (constants and range as given in an open library)");

  private final double api;

  NgEgbogah(double api) {
    this.api = api;
  }

  @Override
  public Computed<Viscosity> at(Temperature temperature) {
    double fahrenheit = Math.max(temperature.toFahrenheit(), HELD_BELOW_F);
    Viscosity mu = Viscosity.ofCentipoise(centipoise(api, fahrenheit));
    return Computed.of(mu, () -> working(fahrenheit)).with(cautions(temperature));
  }

  static double centipoise(double api, double fahrenheit) {
    double loglog = INTERCEPT - PER_API * api - PER_LOG_T * Math.log10(fahrenheit);
    return Math.pow(10, Math.pow(10, loglog)) - 1;
  }

  private Working working(double fahrenheit) {
    return Working.of(
        "Viscosity of the oil from its gravity",
        "mu",
        "10^(10^(1.8653-0.025086*API-0.5644*log10(T)))-1",
        Unit.CENTIPOISE,
        SOURCE,
        Term.of("API", "gravity of the oil", api, Unit.DEGREE_API),
        Term.of("T", "temperature", fahrenheit, Unit.FAHRENHEIT));
  }

  private List<Caution> cautions(Temperature temperature) {
    List<Caution> said = new ArrayList<>();
    double fahrenheit = temperature.toFahrenheit();
    if (fahrenheit < COLDEST_F || fahrenheit > HOTTEST_F) {
      said.add(
          new Caution(
              "oil-viscosity-out-of-range",
              Said.temperature(temperature)
                  + " is outside the 59 to 176 °F of the viscosity correlation, and cold oil is"
                  + " where correlations fail: type two measured viscosities."));
    }
    if (api < HEAVIEST_API || api > LIGHTEST_API) {
      said.add(
          new Caution(
              "oil-gravity-out-of-range",
              Said.api(api)
                  + " is outside the 5 to 58 °API of the viscosity correlation: type two measured"
                  + " viscosities."));
    }
    DeadOilBand band = DeadOilBand.of(api, temperature);
    said.add(
        new Caution(
            "oil-viscosity-not-measured",
            "The oil's viscosity is a guess from its gravity: at "
                + Said.temperature(temperature)
                + " published correlations say "
                + Figures.significant(band.low(), 2)
                + " to "
                + Figures.significant(band.high(), 2)
                + " cP; two measured points would replace it."));
    return said;
  }
}
