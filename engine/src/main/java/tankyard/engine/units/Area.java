package tankyard.engine.units;

/** An area. */
public record Area(Amount typed) implements Quantity {
  public Area {
    typed.require(Dimension.AREA);
    if (typed.si() < 0) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.AREA.words()
              + " can't be less than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static Area of(double value, Unit unit) {
    return new Area(new Amount(value, unit));
  }

  public static Area ofSquareFeet(double value) {
    return of(value, Unit.SQUARE_FOOT);
  }

  public double toSquareFeet() {
    return typed.in(Unit.SQUARE_FOOT);
  }

  public double squareMetres() {
    return typed.si();
  }
}
