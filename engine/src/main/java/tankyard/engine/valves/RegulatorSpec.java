package tankyard.engine.valves;

import java.util.Optional;
import tankyard.engine.units.Cv;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;

/**
 * A spring-loaded back-pressure regulator.
 *
 * @param setting where it starts to open
 * @param buildUp how far the pressure rises above that at {@code fullFlow}
 * @param fullFlow rate at which the build-up is reached; empty takes it at any flow
 * @param wideOpen its coefficient fully open, if known
 */
public record RegulatorSpec(
    Pressure setting, Pressure buildUp, Optional<LiquidRate> fullFlow, Optional<Cv> wideOpen) {
  public RegulatorSpec {
    if (setting.pascals() < 0 || buildUp.pascals() < 0) {
      throw new IllegalArgumentException(
          "A regulator's setting and build-up can't be below zero: "
              + setting.toPsi()
              + " psi, "
              + buildUp.toPsi()
              + " psi");
    }
  }
}
