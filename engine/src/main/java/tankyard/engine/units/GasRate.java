package tankyard.engine.units;

/** A rate of gas at standard conditions (60 degF, 14.696 psia). */
public record GasRate(Amount typed) implements Quantity {
  public GasRate {
    typed.require(Dimension.GAS_RATE);
    if (typed.si() < 0) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.GAS_RATE.words()
              + " can't be less than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static GasRate of(double value, Unit unit) {
    return new GasRate(new Amount(value, unit));
  }

  public static GasRate ofMcfPerDay(double value) {
    return of(value, Unit.MCF_PER_DAY);
  }

  public double toMcfPerDay() {
    return typed.in(Unit.MCF_PER_DAY);
  }

  public double standardCubicMetresPerSecond() {
    return typed.si();
  }
}
