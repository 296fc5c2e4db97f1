package tankyard.engine.fluids;

/**
 * The explicit fit of Brill and Beggs (1974) to the Standing-Katz chart: {@code z = A + (1 - A)
 * exp(-B) + C Pr^D}. For reduced temperatures from 1.15 to 2.4 and pressures to 13 (range from
 * memory).
 */
final class BrillBeggs {
  private BrillBeggs() {}

  static double z(double reducedT, double reducedP) {
    if (!(reducedT > 0.92 && reducedP >= 0)) {
      throw new IllegalArgumentException(
          "The Brill and Beggs fit needs a reduced temperature above 0.92, not "
              + reducedT
              + "; take the other gas law.");
    }
    double a = 1.39 * Math.sqrt(reducedT - 0.92) - 0.36 * reducedT - 0.101;
    double b =
        (0.62 - 0.23 * reducedT) * reducedP
            + (0.066 / (reducedT - 0.86) - 0.037) * reducedP * reducedP
            + 0.32 * Math.pow(reducedP, 6) / Math.pow(10, 9 * (reducedT - 1));
    double c = 0.132 - 0.32 * Math.log10(reducedT);
    double d = Math.pow(10, 0.3106 - 0.49 * reducedT + 0.1824 * reducedT * reducedT);
    return a + (1 - a) * Math.exp(-b) + c * Math.pow(reducedP, d);
  }
}
