package tankyard.engine.fluids;

/**
 * A liquid at one temperature, as the flow laws need it.
 *
 * @param densityKgPerM3 above zero
 * @param viscosityPaS dynamic, above zero
 */
public record Liquid(double densityKgPerM3, double viscosityPaS) {
  public Liquid {
    if (!(densityKgPerM3 > 0 && Double.isFinite(densityKgPerM3))) {
      throw new IllegalArgumentException("A density must be above zero: " + densityKgPerM3);
    }
    if (!(viscosityPaS > 0 && Double.isFinite(viscosityPaS))) {
      throw new IllegalArgumentException("A viscosity must be above zero: " + viscosityPaS);
    }
  }

  /** Density against fresh water at 60 degF. */
  public double specificGravity() {
    return densityKgPerM3 / Water.DENSITY_AT_60F;
  }

  /** What a rise of so many metres costs, Pa; a fall gives it back. */
  public double staticPascals(double riseM) {
    return densityKgPerM3 * Water.STANDARD_GRAVITY * riseM;
  }
}
