package tankyard.engine.pipes.gasliquid;

import java.util.Optional;
import tankyard.engine.fluids.AbsolutePressure;

/**
 * What goes through a line, from its start to its end.
 *
 * @param liquidM3PerS at the line's temperature
 * @param standardGasM3PerS at 60 degF and 14.696 psia, what the oil holds included
 * @param solution what the oil holds; empty where it is taken to hold none
 */
public record GasLiquidFlow(
    double liquidM3PerS, double standardGasM3PerS, Optional<Solution> solution) {
  public GasLiquidFlow {
    if (!(liquidM3PerS >= 0 && standardGasM3PerS >= 0 && liquidM3PerS + standardGasM3PerS > 0)) {
      throw new IllegalArgumentException(
          "A gas-liquid line needs something that flows forward: "
              + liquidM3PerS
              + " m3/s of liquid, "
              + standardGasM3PerS
              + " Sm3/s of gas. A line that stands still is worked out as full of liquid.");
    }
  }

  /** All gas free. */
  public GasLiquidFlow(double liquidM3PerS, double standardGasM3PerS) {
    this(liquidM3PerS, standardGasM3PerS, Optional.empty());
  }

  /** Gas beside the liquid at a pressure, standard m3/s. */
  public double freeGas(AbsolutePressure pressure) {
    double held = solution.map(s -> s.standardM3PerS(pressure)).orElse(0.0);
    return Math.max(0, standardGasM3PerS - held);
  }
}
