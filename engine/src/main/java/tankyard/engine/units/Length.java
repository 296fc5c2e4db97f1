package tankyard.engine.units;

/** A length, or a height above something named beside it; may be negative. */
public record Length(Amount typed) implements Quantity {
  public Length {
    typed.require(Dimension.LENGTH);
  }

  public static Length of(double value, Unit unit) {
    return new Length(new Amount(value, unit));
  }

  public static Length ofFeet(double value) {
    return of(value, Unit.FOOT);
  }

  public double toFeet() {
    return typed.in(Unit.FOOT);
  }

  public static Length ofInches(double value) {
    return of(value, Unit.INCH);
  }

  public double toInches() {
    return typed.in(Unit.INCH);
  }

  public double metres() {
    return typed.si();
  }
}
