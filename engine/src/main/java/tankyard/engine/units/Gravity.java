package tankyard.engine.units;

/** Specific gravity against fresh water at 60 degF, or degrees API (SG = 141.5/(API + 131.5)). */
public record Gravity(Amount typed) implements Quantity {
  public Gravity {
    typed.require(Dimension.GRAVITY);
    if (!(typed.si() > 0)) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.GRAVITY.words()
              + " must be more than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static Gravity of(double value, Unit unit) {
    return new Gravity(new Amount(value, unit));
  }

  public static Gravity ofApi(double value) {
    return of(value, Unit.DEGREE_API);
  }

  public double toApi() {
    return typed.in(Unit.DEGREE_API);
  }

  public double specific() {
    return typed.si();
  }
}
