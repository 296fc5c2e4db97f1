package tankyard.engine.fluids;

import java.util.List;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Oil holding gas, by Beggs and Robinson 1975: {@code mu = a mu0^b}, {@code a = 10.715 (Rs +
 * 100)^-0.515}, {@code b = 5.44 (Rs + 150)^-0.338}, Rs 20 to 2,070 scf/bbl. With none it gives the
 * dead oil back within a few thousandths.
 */
record Saturated(Computed<Viscosity> dead, double scfPerBbl) {
  private static final Source SOURCE =
      Source.published("Beggs and Robinson 1975 (constants and range as given in an open library)");

  Viscosity viscosity() {
    double a = 10.715 * Math.pow(scfPerBbl + 100, -0.515);
    double b = 5.44 * Math.pow(scfPerBbl + 150, -0.338);
    return Viscosity.ofCentipoise(a * Math.pow(dead.value().toCentipoise(), b));
  }

  Working working() {
    return Working.of(
            "Viscosity of the oil with gas in it",
            "mu",
            "10.715/(Rs+100)^0.515*mu0^(5.44/(Rs+150)^0.338)",
            Unit.CENTIPOISE,
            SOURCE,
            Term.number("Rs", "gas in solution, scf/bbl", scfPerBbl),
            Term.of("mu0", "without gas", dead.value(), Unit.CENTIPOISE))
        .from(List.of(dead.working()));
  }
}
