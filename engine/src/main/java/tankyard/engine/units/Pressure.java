package tankyard.engine.units;

/** A gauge pressure or a pressure difference; never an absolute pressure. */
public record Pressure(Amount typed) implements Quantity {
  public Pressure {
    typed.require(Dimension.PRESSURE);
  }

  public static Pressure of(double value, Unit unit) {
    return new Pressure(new Amount(value, unit));
  }

  public static Pressure ofPsi(double value) {
    return of(value, Unit.PSI);
  }

  /** A pressure worked out in Pa, kept in psi as results are shown. */
  public static Pressure psiFromPascals(double pascals) {
    return ofPsi(Unit.PSI.fromSi(pascals));
  }

  public double toPsi() {
    return typed.in(Unit.PSI);
  }

  public static Pressure ofKilopascals(double value) {
    return of(value, Unit.KILOPASCAL);
  }

  public double toKilopascals() {
    return typed.in(Unit.KILOPASCAL);
  }

  public double pascals() {
    return typed.si();
  }
}
