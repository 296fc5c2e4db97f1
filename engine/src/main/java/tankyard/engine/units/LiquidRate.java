package tankyard.engine.units;

/**
 * A rate of liquid. Whether it is a day's average or the rate while running is said by the name
 * beside it.
 */
public record LiquidRate(Amount typed) implements Quantity {
  public LiquidRate {
    typed.require(Dimension.LIQUID_RATE);
    if (typed.si() < 0) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.LIQUID_RATE.words()
              + " can't be less than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static LiquidRate of(double value, Unit unit) {
    return new LiquidRate(new Amount(value, unit));
  }

  public static LiquidRate ofBarrelsPerDay(double value) {
    return of(value, Unit.BARREL_PER_DAY);
  }

  public double toBarrelsPerDay() {
    return typed.in(Unit.BARREL_PER_DAY);
  }

  public static LiquidRate ofGpm(double value) {
    return of(value, Unit.GALLON_PER_MINUTE);
  }

  public double toGpm() {
    return typed.in(Unit.GALLON_PER_MINUTE);
  }

  public double cubicMetresPerSecond() {
    return typed.si();
  }
}
