package tankyard.engine.fluids;

import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Viscosity of gas by Lee, Gonzalez and Eakin 1966: {@code mu = 1e-4 K exp(X r^Y)} cP, with {@code
 * K = (9.4 + 0.02 M) T^1.5 / (209 + 19 M + T)}, {@code X = 3.5 + 986/T + 0.01 M}, {@code Y = 2.4 -
 * 0.2 X}; T in degR, r in g/cc. 100 to 340 degF, 100 to 8,000 psia. At lease pressures the density
 * hardly counts, so the low end of the range is harmless; cold gas is a short reach.
 */
final class LeeGonzalezEakin {
  private static final Source SOURCE =
      Source.published("Lee, Gonzalez and Eakin 1966 (constants as given in an open library)");

  /** Of air, as the law's restatement prints it; the gas law beside it takes 28.964. */
  private static final double AIR = 28.96;

  private final double molarMass;
  private final double rankine;
  private final double gramsPerCc;

  LeeGonzalezEakin(double gravityToAir, Temperature temperature, double densityKgPerM3) {
    molarMass = AIR * gravityToAir;
    rankine = temperature.kelvins() * 1.8;
    gramsPerCc = densityKgPerM3 / 1000;
  }

  double centipoise() {
    double k = (9.4 + 0.02 * molarMass) * Math.pow(rankine, 1.5) / (209 + 19 * molarMass + rankine);
    double x = 3.5 + 986 / rankine + 0.01 * molarMass;
    double y = 2.4 - 0.2 * x;
    return 1e-4 * k * Math.exp(x * Math.pow(gramsPerCc, y));
  }

  Working working() {
    return Working.of(
        "Viscosity of the gas",
        "mu",
        "0.0001*(9.4+0.02*M)*T^1.5/(209+19*M+T)"
            + "*2.718281828^((3.5+986/T+0.01*M)*rho^(2.4-0.2*(3.5+986/T+0.01*M)))",
        Unit.CENTIPOISE,
        SOURCE,
        Term.number("M", "molar mass, lb/lbmol", molarMass),
        Term.number("T", "temperature, °R", rankine),
        Term.of("rho", "density here", gramsPerCc, Unit.GRAM_PER_CUBIC_CENTIMETRE));
  }
}
