package tankyard.engine.fluids;

/**
 * Brine by McCain 1991 (coefficients from memory), the law that a published example was worked
 * with. The program itself takes others, which hold from colder water on; this one is held beside
 * them.
 *
 * @param fahrenheit temperature
 * @param psia pressure
 * @param solids weight percent
 */
record McCainBrine(double fahrenheit, double psia, double solids) {
  private static final double KG_PER_M3 = 16.018463374;

  double formationVolumeFactor() {
    double t = fahrenheit;
    double p = psia;
    double byPressure =
        -1.95301e-9 * p * t - 1.72834e-13 * p * p * t - 3.58922e-7 * p - 2.25341e-10 * p * p;
    double byHeat = -1.0001e-2 + 1.33391e-4 * t + 5.50654e-7 * t * t;
    return (1 + byPressure) * (1 + byHeat);
  }

  double densityKgPerM3() {
    double atSurface = 62.368 + 0.438603 * solids + 1.60074e-3 * solids * solids;
    return KG_PER_M3 * atSurface / formationVolumeFactor();
  }

  double viscosityCp() {
    double s = solids;
    double a = 109.574 - 8.40564 * s + 0.313314 * s * s + 8.72213e-3 * s * s * s;
    double b =
        1.12166
            - 2.63951e-2 * s
            + 6.79461e-4 * s * s
            + 5.47119e-5 * s * s * s
            - 1.55586e-6 * s * s * s * s;
    return a * Math.pow(fahrenheit, -b) * (0.9994 + 4.0295e-5 * psia + 3.1062e-9 * psia * psia);
  }
}
