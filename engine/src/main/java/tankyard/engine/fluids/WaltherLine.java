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
 * The line through two measured viscosities: {@code log10 log10(nu + 0.7) = A - B log10 T}, nu in
 * cSt, T absolute. ASTM D341 (Walther), from memory; meant for nu above 2 cSt.
 */
final class WaltherLine implements ViscosityLaw {
  private static final double ADDED = 0.7;
  private static final double THINNEST_CST = 2;

  /** The line is usually trusted this far beyond its points; common practice, no source. */
  private static final double REACH_K = 15;

  private static final Source SOURCE = Source.memory("ASTM D341 line through two measured points");

  private final CrudeDensity density;
  private final ViscosityPoint cool;
  private final ViscosityPoint warm;
  private final double nuCool;
  private final double nuWarm;

  WaltherLine(CrudeDensity density, ViscosityPoint cool, ViscosityPoint warm) {
    this.density = density;
    this.cool = cool;
    this.warm = warm;
    nuCool = kinematic(cool);
    nuWarm = kinematic(warm);
    if (nuWarm + ADDED <= 1 || nuWarm >= nuCool) {
      throw new IllegalArgumentException(
          "No viscosity line fits "
              + cool.viscosity().toCentipoise()
              + " cP and "
              + warm.viscosity().toCentipoise()
              + " cP: the warmer must be thinner, and thicker than 0.3 cSt.");
    }
  }

  /** Kelvin up to which this pair is the nearer one, where several pairs were measured. */
  double upTo() {
    return warm.temperature().kelvins();
  }

  @Override
  public Computed<Viscosity> at(Temperature temperature) {
    double grams = grams(temperature);
    double nu = centistokes(temperature.kelvins());
    return Computed.of(Viscosity.ofCentipoise(nu * grams), () -> working(temperature))
        .with(cautions(temperature, nu));
  }

  private double centistokes(double kelvins) {
    double tCool = cool.temperature().kelvins();
    double steps = Math.log(kelvins / tCool) / Math.log(warm.temperature().kelvins() / tCool);
    double log = Math.log10(nuCool + ADDED);
    double ratio = Math.log10(nuWarm + ADDED) / log;
    return Math.pow(10, log * Math.pow(ratio, steps)) - ADDED;
  }

  private double kinematic(ViscosityPoint point) {
    return point.viscosity().toCentipoise() / grams(point.temperature());
  }

  private double grams(Temperature temperature) {
    return density.at(temperature).value().specific() * Water.DENSITY_AT_60F / 1000;
  }

  private Working working(Temperature temperature) {
    return Working.of(
        "Viscosity of the oil from two measured points",
        "mu",
        "rho*(10^(log10(nu1+0.7)*(log10(nu2+0.7)/log10(nu1+0.7))"
            + "^(log10(T/T1)/log10(T2/T1)))-0.7)",
        Unit.CENTIPOISE,
        SOURCE,
        Term.of("rho", "density here", grams(temperature), Unit.GRAM_PER_CUBIC_CENTIMETRE),
        Term.number("nu1", "first point over its density, cSt", nuCool),
        Term.of("T1", "first point", cool.temperature(), Unit.KELVIN),
        Term.number("nu2", "second point over its density, cSt", nuWarm),
        Term.of("T2", "second point", warm.temperature(), Unit.KELVIN),
        Term.of("T", "temperature", temperature, Unit.KELVIN));
  }

  private List<Caution> cautions(Temperature temperature, double nu) {
    List<Caution> said = new ArrayList<>();
    double kelvins = temperature.kelvins();
    if (kelvins < cool.temperature().kelvins() - REACH_K
        || kelvins > warm.temperature().kelvins() + REACH_K) {
      said.add(
          new Caution(
              "oil-viscosity-extrapolated",
              Said.temperature(temperature)
                  + " is far outside the measured "
                  + Said.temperature(cool.temperature())
                  + " to "
                  + Said.temperature(warm.temperature())
                  + "; a measurement nearer to it would help."));
    }
    if (nu < THINNEST_CST) {
      said.add(
          new Caution(
              "oil-viscosity-thin",
              "Below 2 cSt the viscosity line is bent; the oil at "
                  + Said.temperature(temperature)
                  + " comes out thinner than that."));
    }
    return said;
  }
}
