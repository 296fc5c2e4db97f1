package tankyard.engine.fluids;

import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Oil squeezed above its bubble point: {@code mu = mub (P/Pb)^m}, {@code m = 2.6 P^1.187
 * exp(-11.513 - 8.98e-5 P)}, psia. Vasquez and Beggs 1980; constants from memory, held against an
 * open package's worked example.
 */
record VasquezBeggs(Viscosity atBubblePoint, double bubblePsia, double psia) {
  private static final Source SOURCE = Source.memory("Vasquez and Beggs 1980");

  Viscosity viscosity() {
    double m = 2.6 * Math.pow(psia, 1.187) * Math.exp(-11.513 - 8.98e-5 * psia);
    return Viscosity.ofCentipoise(atBubblePoint.toCentipoise() * Math.pow(psia / bubblePsia, m));
  }

  Working working() {
    return Working.of(
        "Viscosity of the oil above its bubble point",
        "mu",
        "mub*(P/Pb)^(2.6*P^1.187*2.718281828^(0-11.513-0.0000898*P))",
        Unit.CENTIPOISE,
        SOURCE,
        Term.of("mub", "at the bubble point", atBubblePoint, Unit.CENTIPOISE),
        Term.of("P", "absolute pressure", psia, Unit.PSI),
        Term.of("Pb", "bubble point, absolute", bubblePsia, Unit.PSI));
  }
}
