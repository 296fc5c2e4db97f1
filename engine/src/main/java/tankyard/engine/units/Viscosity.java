package tankyard.engine.units;

/** A dynamic viscosity. */
public record Viscosity(Amount typed) implements Quantity {
  public Viscosity {
    typed.require(Dimension.VISCOSITY);
    if (!(typed.si() > 0)) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.VISCOSITY.words()
              + " must be more than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static Viscosity of(double value, Unit unit) {
    return new Viscosity(new Amount(value, unit));
  }

  public static Viscosity ofCentipoise(double value) {
    return of(value, Unit.CENTIPOISE);
  }

  public double toCentipoise() {
    return typed.in(Unit.CENTIPOISE);
  }

  public double pascalSeconds() {
    return typed.si();
  }
}
