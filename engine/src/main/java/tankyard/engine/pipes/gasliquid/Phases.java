package tankyard.engine.pipes.gasliquid;

import java.util.Objects;
import tankyard.engine.fluids.Gas;
import tankyard.engine.fluids.Liquid;

/**
 * Liquid and gas side by side at one place.
 *
 * @param tensionNPerM surface tension between them; 0.02 to 0.03 for crude and gas near the surface
 */
public record Phases(Liquid liquid, Gas gas, double tensionNPerM) {
  public Phases {
    Objects.requireNonNull(liquid, "liquid");
    Objects.requireNonNull(gas, "gas");
    if (!(tensionNPerM > 0)) {
      throw new IllegalArgumentException("A surface tension must be above zero: " + tensionNPerM);
    }
  }
}
