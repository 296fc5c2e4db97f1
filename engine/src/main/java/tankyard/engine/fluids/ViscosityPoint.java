package tankyard.engine.fluids;

import java.util.Objects;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Viscosity;

/** A viscosity that somebody measured. */
public record ViscosityPoint(Temperature temperature, Viscosity viscosity) {
  public ViscosityPoint {
    Objects.requireNonNull(temperature, "temperature");
    Objects.requireNonNull(viscosity, "viscosity");
  }
}
