package tankyard.engine.units;

/** A voltage between the wires of a supply. */
public record Voltage(Amount typed) implements Quantity {
  public Voltage {
    typed.require(Dimension.VOLTAGE);
    if (typed.si() < 0) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.VOLTAGE.words()
              + " can't be less than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static Voltage of(double value, Unit unit) {
    return new Voltage(new Amount(value, unit));
  }

  public static Voltage ofVolts(double value) {
    return of(value, Unit.VOLT);
  }

  public double volts() {
    return typed.si();
  }
}
