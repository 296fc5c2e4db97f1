package tankyard.engine.fluids;

/**
 * The air's pressure at an altitude by the 1976 standard atmosphere, up to 11 km: {@code p = p0 (1
 * - L z / T0)^5.25588}. Weather moves it by about 2 % either way.
 */
public final class Atmosphere {
  private static final double SEA_LEVEL_PA = 101325;
  private static final double SEA_LEVEL_K = 288.15;
  private static final double LAPSE_K_PER_M = 0.0065;
  private static final double EXPONENT = 5.25588;
  private static final double HIGHEST_M = 11000;

  private Atmosphere() {}

  public static AbsolutePressure at(double altitudeM) {
    if (!(Math.abs(altitudeM) <= HIGHEST_M)) {
      throw new IllegalArgumentException(
          "The standard atmosphere is known up to 11,000 m, not at " + altitudeM + " m");
    }
    return new AbsolutePressure(
        SEA_LEVEL_PA * Math.pow(1 - LAPSE_K_PER_M * altitudeM / SEA_LEVEL_K, EXPONENT));
  }
}
