package tankyard.engine.units;

/** Heat a buried line loses for each area of its outside and each degree over the ground. */
public record HeatLoss(Amount typed) implements Quantity {
  public HeatLoss {
    typed.require(Dimension.HEAT_LOSS);
    if (typed.si() < 0) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.HEAT_LOSS.words()
              + " can't be less than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static HeatLoss of(double value, Unit unit) {
    return new HeatLoss(new Amount(value, unit));
  }

  /** On the outside area of the pipe. */
  public static HeatLoss ofBtuPerHourSquareFootFahrenheit(double value) {
    return of(value, Unit.BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT);
  }

  public double wattsPerSquareMetreKelvin() {
    return typed.si();
  }
}
