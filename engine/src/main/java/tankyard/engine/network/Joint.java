package tankyard.engine.network;

import java.util.OptionalDouble;

/**
 * Where links meet.
 *
 * @param id unique in its network
 * @param inflow m3/s that comes in from outside; negative where it is drawn off
 * @param heldPa gauge pressure, where something holds it
 */
public record Joint(String id, double inflow, OptionalDouble heldPa) {
  public static Joint free(String id, double inflow) {
    return new Joint(id, inflow, OptionalDouble.empty());
  }

  public static Joint held(String id, double pressurePa) {
    return new Joint(id, 0, OptionalDouble.of(pressurePa));
  }

  boolean isHeld() {
    return heldPa.isPresent();
  }
}
