package tankyard.engine.units;

/** A speed of rotation. */
public record Rotation(Amount typed) implements Quantity {
  public Rotation {
    typed.require(Dimension.ROTATION);
    if (typed.si() < 0) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.ROTATION.words()
              + " can't be less than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static Rotation of(double value, Unit unit) {
    return new Rotation(new Amount(value, unit));
  }

  public static Rotation ofRpm(double value) {
    return of(value, Unit.RPM);
  }

  public double toRpm() {
    return typed.in(Unit.RPM);
  }

  public double radiansPerSecond() {
    return typed.si();
  }
}
