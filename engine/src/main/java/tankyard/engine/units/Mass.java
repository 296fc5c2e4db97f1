package tankyard.engine.units;

/** A mass. */
public record Mass(Amount typed) implements Quantity {
  public Mass {
    typed.require(Dimension.MASS);
    if (typed.si() < 0) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.MASS.words()
              + " can't be less than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static Mass of(double value, Unit unit) {
    return new Mass(new Amount(value, unit));
  }

  public static Mass ofPounds(double value) {
    return of(value, Unit.POUND);
  }

  public double toPounds() {
    return typed.in(Unit.POUND);
  }

  public double kilograms() {
    return typed.si();
  }
}
