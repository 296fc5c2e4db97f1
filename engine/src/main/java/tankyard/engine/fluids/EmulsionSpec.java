package tankyard.engine.fluids;

import java.util.Optional;
import tankyard.engine.units.Fraction;
import tankyard.engine.working.Working;

/**
 * How oil and water travel together.
 *
 * @param inversionWaterCut below it the oil carries the water, from it on the water carries the oil
 * @param tightness how thick it gets before; without it the law of Guth and Simha is taken
 */
public record EmulsionSpec(Fraction inversionWaterCut, Optional<Tightness> tightness) {
  /** Often taken between 60 and 70 %; from memory. */
  public static final EmulsionSpec USUAL =
      new EmulsionSpec(Fraction.ofPercent(60), Optional.empty());

  /** Whether a viscosity was worked out for oil that carries water. */
  public static boolean isLawOf(Working viscosity) {
    return Mixture.isOilCarrying(viscosity);
  }

  public EmulsionSpec {
    double ratio = inversionWaterCut.ratio();
    if (!(ratio > 0 && ratio < 1)) {
      throw new IllegalArgumentException(
          "The water cut at which the mixture turns over must lie between 0 and 100 %: "
              + inversionWaterCut.toPercent()
              + " %");
    }
  }
}
