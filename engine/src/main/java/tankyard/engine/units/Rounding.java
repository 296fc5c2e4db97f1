package tankyard.engine.units;

/** To which side a number is rounded when it is shown. */
public enum Rounding {
  NEAREST,
  UP,
  DOWN;

  /** A step's share by which a number may pass a round one and still count as it. */
  private static final double TOUCH = 1e-6;

  public double round(double value, int decimals) {
    return toParts(value, Math.pow(10, decimals));
  }

  /**
   * To a whole number of parts of one: of eighths, of quarters.
   *
   * @param parts that make one
   */
  public double toParts(double value, double parts) {
    return switch (this) {
      case NEAREST -> value;
      case UP -> Math.ceil(value * parts - TOUCH) / parts;
      case DOWN -> Math.floor(value * parts + TOUCH) / parts;
    };
  }
}
