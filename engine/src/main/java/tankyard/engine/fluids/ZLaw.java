package tankyard.engine.fluids;

import tankyard.engine.working.Source;

/** How far a gas is from an ideal one, by its reduced temperature and pressure. */
public enum ZLaw {
  /** The default: an equation of state, solved to machine accuracy. */
  DRANCHUK_ABOU_KASSEM(
      Source.published("Dranchuk and Abou-Kassem 1975 (constants as given in an open library)"),
      1,
      3,
      30),
  /** Explicit; quick by hand, and wrong by more near the critical point. */
  BRILL_BEGGS(
      Source.published("Brill and Beggs 1974 (constants as given in an open package)"),
      1.15,
      2.4,
      13);

  private final Source source;
  private final double coolest;
  private final double warmest;
  private final double highest;

  ZLaw(Source source, double coolest, double warmest, double highest) {
    this.source = source;
    this.coolest = coolest;
    this.warmest = warmest;
    this.highest = highest;
  }

  public Source source() {
    return source;
  }

  /**
   * The compressibility factor.
   *
   * @param reducedT temperature over the pseudo-critical one, both absolute
   * @param reducedP pressure over the pseudo-critical one, both absolute; zero gives 1
   */
  public double at(double reducedT, double reducedP) {
    return this == BRILL_BEGGS
        ? BrillBeggs.z(reducedT, reducedP)
        : new DranchukAbouKassem(reducedT).z(reducedP);
  }

  /**
   * Where the law was fitted. Below the lowest pressure of a chart z tends to 1, so that end needs
   * no word.
   */
  boolean covers(double reducedT, double reducedP) {
    boolean warm = reducedT >= coolest && reducedT <= warmest && reducedP <= highest;
    boolean cool = this == DRANCHUK_ABOU_KASSEM && reducedT >= 0.7 && reducedP < 1;
    return warm || (cool && reducedT < coolest);
  }
}
