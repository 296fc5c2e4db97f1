package tankyard.engine.units;

/** A force; below zero where it pulls the other way. */
public record Force(Amount typed) implements Quantity {
  public Force {
    typed.require(Dimension.FORCE);
  }

  public static Force of(double value, Unit unit) {
    return new Force(new Amount(value, unit));
  }

  public static Force ofPounds(double value) {
    return of(value, Unit.POUND_FORCE);
  }

  public double toPounds() {
    return typed.in(Unit.POUND_FORCE);
  }

  public double newtons() {
    return typed.si();
  }
}
