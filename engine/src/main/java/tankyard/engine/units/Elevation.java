package tankyard.engine.units;

/** A height above the site datum, up positive. A height above the ground is a {@link Length}. */
public record Elevation(Amount typed) implements Quantity {
  public Elevation {
    typed.require(Dimension.ELEVATION);
  }

  public static Elevation of(double value, Unit unit) {
    return new Elevation(new Amount(value, unit));
  }

  public static Elevation ofFeet(double value) {
    return of(value, Unit.ELEVATION_FOOT);
  }

  public double toFeet() {
    return typed.in(Unit.ELEVATION_FOOT);
  }

  public double metres() {
    return typed.si();
  }
}
