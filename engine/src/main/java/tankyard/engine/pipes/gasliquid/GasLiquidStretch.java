package tankyard.engine.pipes.gasliquid;

/**
 * What the march gathered from the line's upstream end down to what governs it: its other end, or
 * the high point beyond which it runs part full.
 *
 * @param risePascals lost on the way up
 * @param fallPascals given back on the way down, not below zero
 * @param frictionPascals with fittings
 * @param accelerationPascals spent on speeding the gas up
 */
public record GasLiquidStretch(
    double risePascals,
    double fallPascals,
    double frictionPascals,
    double accelerationPascals,
    int steps) {
  static final GasLiquidStretch NONE = new GasLiquidStretch(0, 0, 0, 0, 0);

  GasLiquidStretch with(GasLiquidStep step) {
    double length = step.lengthM();
    double lift = step.gradient().liftPaPerM() * length;
    double friction = step.gradient().frictionPaPerM() * length;
    return new GasLiquidStretch(
        risePascals + Math.max(0, lift),
        fallPascals + Math.max(0, -lift),
        frictionPascals + friction,
        accelerationPascals + step.pascals() - lift - friction,
        steps + 1);
  }

  public double liftPascals() {
    return risePascals - fallPascals;
  }

  /** Friction and acceleration. */
  public double lossPascals() {
    return frictionPascals + accelerationPascals;
  }
}
