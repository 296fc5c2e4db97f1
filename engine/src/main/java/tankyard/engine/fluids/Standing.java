package tankyard.engine.fluids;

import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * How much gas stays in oil: {@code Pb = 18.2 ((Rs/g)^0.83 10^(0.00091 T - 0.0125 API) - 1.4)},
 * psia, scf/bbl, degF. Standing 1947, from Californian oils; constants from memory, held against an
 * open package's worked example. Read backwards it gives the gas in solution at a pressure.
 */
final class Standing {
  private static final Source SOURCE = Source.memory("Standing 1947, bubble point");

  private Standing() {}

  static double bubblePointPsia(double rs, double gasGravity, double api, Temperature temperature) {
    return 18.2 * (Math.pow(rs / gasGravity, 0.83) * warm(api, temperature) - 1.4);
  }

  static double solutionGas(double psia, double gasGravity, double api, Temperature temperature) {
    return gasGravity * Math.pow((psia / 18.2 + 1.4) / warm(api, temperature), 1 / 0.83);
  }

  static Working working(double rs, double gasGravity, double api, Temperature temperature) {
    return Working.of(
        "Bubble point, absolute",
        "Pb",
        "18.2*((Rs/g)^0.83*10^(0.00091*T-0.0125*API)-1.4)",
        Unit.PSI,
        SOURCE,
        Term.number("Rs", "gas in solution, scf/bbl", rs),
        Term.number("g", "gravity of the gas, air 1", gasGravity),
        Term.of("T", "temperature", temperature, Unit.FAHRENHEIT),
        Term.of("API", "gravity of the oil", api, Unit.DEGREE_API));
  }

  private static double warm(double api, Temperature temperature) {
    return Math.pow(10, 0.00091 * temperature.toFahrenheit() - 0.0125 * api);
  }
}
