package tankyard.engine.units;

/** A valve's flow coefficient: US gpm of water at 1 psi across it. */
public record Cv(Amount typed) implements Quantity {
  public Cv {
    typed.require(Dimension.FLOW_COEFFICIENT);
    if (!(typed.si() > 0)) {
      throw new IllegalArgumentException(
          "A "
              + Dimension.FLOW_COEFFICIENT.words()
              + " must be more than zero: "
              + typed.value()
              + " "
              + typed.unit().symbol());
    }
  }

  public static Cv of(double value, Unit unit) {
    return new Cv(new Amount(value, unit));
  }

  public static Cv ofGpmPerRootPsi(double value) {
    return of(value, Unit.CV);
  }

  public double toGpmPerRootPsi() {
    return typed.in(Unit.CV);
  }

  public double av() {
    return typed.si();
  }
}
