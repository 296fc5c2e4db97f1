package tankyard.engine.pipes;

/**
 * The friction factor that Crane's K values are multiples of: fully rough flow in clean commercial
 * steel of roughness 0.0018 in, {@code f = (2 log10(3.7 D / e))^-2}. It follows Crane's printed
 * list of sizes within 0.0006.
 */
final class FullTurbulence {
  private static final double STEEL_M = 0.0018 * 0.0254;

  private FullTurbulence() {}

  static double factor(double boreM) {
    double root = 2 * Math.log10(3.7 * boreM / STEEL_M);
    return 1 / (root * root);
  }
}
