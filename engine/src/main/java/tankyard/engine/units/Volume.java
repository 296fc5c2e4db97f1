package tankyard.engine.units;

/** A volume of liquid or earth. */
public record Volume(Amount typed) implements Quantity {
  public Volume {
    typed.require(Dimension.VOLUME);
    if (typed.si() < 0) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.VOLUME.words()
              + " can't be less than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static Volume of(double value, Unit unit) {
    return new Volume(new Amount(value, unit));
  }

  public static Volume ofBarrels(double value) {
    return of(value, Unit.BARREL);
  }

  public double toBarrels() {
    return typed.in(Unit.BARREL);
  }

  public static Volume ofCubicFeet(double value) {
    return of(value, Unit.CUBIC_FOOT);
  }

  public double toCubicFeet() {
    return typed.in(Unit.CUBIC_FOOT);
  }

  public double cubicMetres() {
    return typed.si();
  }
}
