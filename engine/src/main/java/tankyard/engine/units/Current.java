package tankyard.engine.units;

/** An electric current. */
public record Current(Amount typed) implements Quantity {
  public Current {
    typed.require(Dimension.CURRENT);
    if (typed.si() < 0) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.CURRENT.words()
              + " can't be less than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static Current of(double value, Unit unit) {
    return new Current(new Amount(value, unit));
  }

  public static Current ofAmps(double value) {
    return of(value, Unit.AMPERE);
  }

  public double amps() {
    return typed.si();
  }
}
