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
}
