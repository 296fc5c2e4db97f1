package tankyard.engine.units;

/** A temperature. */
public record Temperature(Amount typed) implements Quantity {
  public Temperature {
    typed.require(Dimension.TEMPERATURE);
    if (!(typed.si() > 0)) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.TEMPERATURE.words()
              + " must be more than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static Temperature of(double value, Unit unit) {
    return new Temperature(new Amount(value, unit));
  }

  public static Temperature ofFahrenheit(double value) {
    return of(value, Unit.FAHRENHEIT);
  }

  public double toFahrenheit() {
    return typed.in(Unit.FAHRENHEIT);
  }

  public static Temperature ofCelsius(double value) {
    return of(value, Unit.CELSIUS);
  }

  public double toCelsius() {
    return typed.in(Unit.CELSIUS);
  }

  public double kelvins() {
    return typed.si();
  }
}
