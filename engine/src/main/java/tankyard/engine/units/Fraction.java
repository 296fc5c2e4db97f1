package tankyard.engine.units;

/** A plain ratio; 5 % is 0.05. */
public record Fraction(Amount typed) implements Quantity {
  public Fraction {
    typed.require(Dimension.FRACTION);
  }

  public static Fraction of(double value, Unit unit) {
    return new Fraction(new Amount(value, unit));
  }

  public static Fraction ofRatio(double value) {
    return of(value, Unit.ONE);
  }

  public static Fraction ofPercent(double value) {
    return of(value, Unit.PERCENT);
  }

  public double toPercent() {
    return typed.in(Unit.PERCENT);
  }

  public double ratio() {
    return typed.si();
  }

  /**
   * The ratio of what gives on less than it takes.
   *
   * @throws IllegalArgumentException where it is not above 0 or is more than 1
   */
  public double efficiency() {
    if (!(ratio() > 0 && ratio() <= 1)) {
      throw new IllegalArgumentException(
          "An efficiency lies between 0 and 100 %, not " + toPercent() + " %");
    }
    return ratio();
  }
}
