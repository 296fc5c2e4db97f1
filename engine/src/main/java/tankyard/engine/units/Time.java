package tankyard.engine.units;

/** A length of time. */
public record Time(Amount typed) implements Quantity {
  public Time {
    typed.require(Dimension.TIME);
    if (typed.si() < 0) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.TIME.words()
              + " can't be less than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static Time of(double value, Unit unit) {
    return new Time(new Amount(value, unit));
  }

  public static Time ofMinutes(double value) {
    return of(value, Unit.MINUTE);
  }

  public double toMinutes() {
    return typed.in(Unit.MINUTE);
  }

  public static Time ofHours(double value) {
    return of(value, Unit.HOUR);
  }

  public double toHours() {
    return typed.in(Unit.HOUR);
  }

  public static Time ofDays(double value) {
    return of(value, Unit.DAY_UNIT);
  }

  public double toDays() {
    return typed.in(Unit.DAY_UNIT);
  }

  public double seconds() {
    return typed.si();
  }
}
