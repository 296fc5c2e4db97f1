package tankyard.engine.fluids;

import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Where a gas would turn critical if it were one pure thing. By Sutton 1985 for sweet gas, {@code
 * Tpc = 169.2 + 349.5 g - 74 g^2} degR and {@code Ppc = 756.8 - 131 g - 3.6 g^2} psia, g against
 * air, 0.57 to 1.68 (range from memory); or measured.
 *
 * @param rankine absolute temperature
 * @param psia absolute pressure
 */
public record PseudoCritical(double rankine, double psia) {
  static final double LIGHTEST = 0.57;
  static final double HEAVIEST = 1.68;
  private static final double RANKINE_PER_KELVIN = 1.8;
  private static final Source SUTTON =
      Source.published("Sutton 1985, sweet gas (constants as given in an open library)");

  public PseudoCritical {
    if (!(rankine > 0 && psia > 0)) {
      throw new IllegalArgumentException(
          "Pseudo-criticals must be above zero: " + rankine + " °R, " + psia + " psia");
    }
  }

  public static PseudoCritical sutton(double gravityToAir) {
    double g = gravityToAir;
    return new PseudoCritical(169.2 + 349.5 * g - 74 * g * g, 756.8 - 131 * g - 3.6 * g * g);
  }

  public double reduced(Temperature temperature) {
    return temperature.kelvins() * RANKINE_PER_KELVIN / rankine;
  }

  public double reduced(AbsolutePressure pressure) {
    return pressure.toPsia() / psia;
  }

  Working reducedTemperatureWorking(double gravityToAir, Temperature temperature) {
    return Working.of(
        "Reduced temperature",
        "Tr",
        "(T+459.67)/(169.2+349.5*g-74*g^2)",
        Unit.ONE,
        SUTTON,
        Term.of("T", "temperature", temperature, Unit.FAHRENHEIT),
        gravity(gravityToAir));
  }

  Working reducedPressureWorking(double gravityToAir, AbsolutePressure pressure) {
    return Working.of(
        "Reduced pressure",
        "Pr",
        "P/(756.8-131*g-3.6*g^2)",
        Unit.ONE,
        SUTTON,
        Term.of("P", "absolute pressure", pressure.toPsia(), Unit.PSI),
        gravity(gravityToAir));
  }

  private static Term gravity(double gravityToAir) {
    return Term.number("g", "gravity of the gas, air 1", gravityToAir);
  }
}
