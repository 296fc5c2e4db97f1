package tankyard.engine.fluids;

import tankyard.engine.units.Temperature;
import tankyard.engine.units.Viscosity;
import tankyard.engine.working.Computed;

/** A liquid's viscosity as it depends on temperature. */
interface ViscosityLaw {
  Computed<Viscosity> at(Temperature temperature);
}
