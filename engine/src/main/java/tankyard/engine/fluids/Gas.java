package tankyard.engine.fluids;

/**
 * A gas at one pressure and temperature, as the flow laws need it.
 *
 * @param densityKgPerM3 above zero
 * @param viscosityPaS dynamic, above zero
 */
public record Gas(double densityKgPerM3, double viscosityPaS) {
  public Gas {
    if (!(densityKgPerM3 > 0 && viscosityPaS > 0)) {
      throw new IllegalArgumentException(
          "Gas needs a density and a viscosity above zero: "
              + densityKgPerM3
              + " kg/m3, "
              + viscosityPaS
              + " Pa s");
    }
  }
}
