package tankyard.engine.pipes;

/**
 * Pressure lost for a friction factor that is already known: {@code (f L / D + K) density v^2/2}.
 */
final class DarcyWeisbach {
  private DarcyWeisbach() {}

  /**
   * Pascals lost.
   *
   * @param velocityHeads f L / D + K
   */
  static double pascals(double velocityHeads, double densityKgPerM3, double velocityMPerS) {
    return velocityHeads * densityKgPerM3 * velocityMPerS * velocityMPerS / 2;
  }
}
