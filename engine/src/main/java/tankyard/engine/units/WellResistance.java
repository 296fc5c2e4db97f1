package tankyard.engine.units;

/** How much an injection well's pressure rises for each unit of rate. */
public record WellResistance(Amount typed) implements Quantity {
  public WellResistance {
    typed.require(Dimension.WELL_RESISTANCE);
    if (typed.si() < 0) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.WELL_RESISTANCE.words()
              + " can't be less than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static WellResistance of(double value, Unit unit) {
    return new WellResistance(new Amount(value, unit));
  }

  public static WellResistance ofPsiPerBarrelPerDay(double value) {
    return of(value, Unit.PSI_PER_BARREL_PER_DAY);
  }

  public double toPsiPerBarrelPerDay() {
    return typed.in(Unit.PSI_PER_BARREL_PER_DAY);
  }

  public double pascalsPerCubicMetrePerSecond() {
    return typed.si();
  }
}
