package tankyard.engine.fluids;

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
 * One measured point with the slope of {@link NgEgbogah} through it: {@code log10(mu + 1) =
 * log10(mu1 + 1) (T1 / T)^0.5644}, mu in cP, T in degF. Right at the point; a guess away from it.
 */
final class OnePointViscosity implements ViscosityLaw {
  /** Farther than this from the point the borrowed slope deserves a word. */
  private static final double NEAR_F = 5;

  private static final Source SOURCE =
      Source.published("one measured point; slope of Ng and Egbogah 1983");

  private final ViscosityPoint point;

  OnePointViscosity(ViscosityPoint point) {
    if (point.temperature().toFahrenheit() < NgEgbogah.HELD_BELOW_F) {
      throw new IllegalArgumentException(
          "A single viscosity measured below 14 °F can't be carried to other temperatures; type a"
              + " second point.");
    }
    this.point = point;
  }

  @Override
  public Computed<Viscosity> at(Temperature temperature) {
    double fahrenheit = Math.max(temperature.toFahrenheit(), NgEgbogah.HELD_BELOW_F);
    double at = point.temperature().toFahrenheit();
    double log =
        Math.log10(point.viscosity().toCentipoise() + 1)
            * Math.pow(at / fahrenheit, NgEgbogah.PER_LOG_T);
    Viscosity mu = Viscosity.ofCentipoise(Math.pow(10, log) - 1);
    return Computed.of(mu, () -> working(fahrenheit)).with(cautions(temperature));
  }

  private Working working(double fahrenheit) {
    return Working.of(
        "Viscosity of the oil from one measured point",
        "mu",
        "10^(log10(mu1+1)*(T1/T)^0.5644)-1",
        Unit.CENTIPOISE,
        SOURCE,
        Term.of("mu1", "measured viscosity", point.viscosity(), Unit.CENTIPOISE),
        Term.of("T1", "where it was measured", point.temperature(), Unit.FAHRENHEIT),
        Term.of("T", "temperature", fahrenheit, Unit.FAHRENHEIT));
  }

  private List<Caution> cautions(Temperature temperature) {
    double off = Math.abs(temperature.toFahrenheit() - point.temperature().toFahrenheit());
    if (off <= NEAR_F) {
      return List.of();
    }
    return List.of(
        new Caution(
            "oil-viscosity-one-point",
            "The oil's viscosity was measured once, at "
                + Said.temperature(point.temperature())
                + ", and is carried to "
                + Said.temperature(temperature)
                + " with the slope of a correlation; a second point would settle it."));
  }
}
