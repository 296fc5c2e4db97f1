package tankyard.engine.pipes.gasliquid;

/**
 * What goes through a line, from its start to its end.
 *
 * @param liquidM3PerS at the line's temperature
 * @param standardGasM3PerS at 60 degF and 14.696 psia; free gas only, what the oil still holds is
 *     not counted
 */
public record GasLiquidFlow(double liquidM3PerS, double standardGasM3PerS) {
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
}
