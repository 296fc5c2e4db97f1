package tankyard.engine.units;

/** A power. */
public record Power(Amount typed) implements Quantity {
  public Power {
    typed.require(Dimension.POWER);
    if (typed.si() < 0) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.POWER.words()
              + " can't be less than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static Power of(double value, Unit unit) {
    return new Power(new Amount(value, unit));
  }

  public static Power ofHorsepower(double value) {
    return of(value, Unit.HORSEPOWER);
  }

  public double toHorsepower() {
    return typed.in(Unit.HORSEPOWER);
  }

  public double watts() {
    return typed.si();
  }
}
