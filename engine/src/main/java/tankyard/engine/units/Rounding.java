package tankyard.engine.units;

/** To which side a number is rounded when it is shown. */
public enum Rounding {
  NEAREST,
  UP,
  DOWN;

  /** A step's share by which a number may pass a round one and still count as it. */
  private static final double TOUCH = 1e-6;

  public double round(double value, int decimals) {
    double step = Math.pow(10, decimals);
    return switch (this) {
      case NEAREST -> value;
      case UP -> Math.ceil(value * step - TOUCH) / step;
      case DOWN -> Math.floor(value * step + TOUCH) / step;
    };
  }
}
