package tankyard.engine.fluids;

import java.util.List;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Viscosity;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Working;

/**
 * A gas at one pressure and temperature with its workings.
 *
 * @param z compressibility factor
 * @param gas its density and viscosity
 * @param densityWorking of the density, lb/ft3
 */
public record GasState(
    AbsolutePressure pressure,
    Temperature temperature,
    Computed<Fraction> z,
    Gas gas,
    Working densityWorking,
    Computed<Viscosity> viscosity,
    List<Caution> cautions) {
  public GasState {
    cautions = List.copyOf(cautions);
  }
}
