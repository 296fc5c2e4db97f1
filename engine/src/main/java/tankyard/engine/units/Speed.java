package tankyard.engine.units;

/** A speed; below zero where it goes the other way. */
public record Speed(Amount typed) implements Quantity {
  public Speed {
    typed.require(Dimension.SPEED);
  }

  public static Speed of(double value, Unit unit) {
    return new Speed(new Amount(value, unit));
  }

  public static Speed ofFeetPerSecond(double value) {
    return of(value, Unit.FOOT_PER_SECOND);
  }

  public double toFeetPerSecond() {
    return typed.in(Unit.FOOT_PER_SECOND);
  }

  public double metresPerSecond() {
    return typed.si();
  }
}
