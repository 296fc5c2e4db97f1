package tankyard.engine.pipes.gasliquid;

/**
 * Pressure lost per metre in the direction of flow, and what the pipe looks like inside.
 *
 * @param liquidPart of the flow
 * @param holdUp part of the pipe that liquid fills, 0 to 1
 * @param mixtureMPerS both superficial velocities together
 * @param liftPaPerM above zero uphill
 * @param frictionPaPerM never below zero
 * @param acceleration Ek, the part of the total that goes into speeding the gas up; 1 is choking
 */
public record Gradient(
    FlowPattern pattern,
    double liquidPart,
    double holdUp,
    double mixtureMPerS,
    double mixtureKgPerM3,
    double liftPaPerM,
    double frictionPaPerM,
    double acceleration) {
  /** Beyond this the law is not to be trusted and its answer is held. */
  static final double MOST_ACCELERATION = 0.9;

  /** Downhill the law would turn negative at low rates; it is held here. */
  static final double LEAST_HOLD_UP = 0.01;

  /** Liquid runs down so fast that the law for hold-up has no answer and was held. */
  public boolean drained() {
    return liquidPart > LEAST_HOLD_UP && liquidPart < 1 && holdUp <= liquidPart;
  }

  /** The gas nears its own speed of sound: no pressure can be given. */
  public boolean choking() {
    return acceleration > MOST_ACCELERATION;
  }

  public double totalPaPerM() {
    return (liftPaPerM + frictionPaPerM) / (1 - Math.min(acceleration, MOST_ACCELERATION));
  }
}
