package tankyard.engine.fluids;

/**
 * Pressure lost on the way, and how fast it grows with the flow.
 *
 * @param pascals with the sign of the flow
 * @param slope Pa per m3/s, never below zero
 */
public record Drop(double pascals, double slope) {
  public static final Drop NONE = new Drop(0, 0);

  public Drop plus(Drop other) {
    return new Drop(pascals + other.pascals, slope + other.slope);
  }

  public Drop times(double factor) {
    return new Drop(pascals * factor, slope * factor);
  }
}
