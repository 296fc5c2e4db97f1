package tankyard.engine.fluids;

import java.util.List;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** A gas's z and density written out. */
record GasWorking(
    GasSpec spec,
    PseudoCritical critical,
    AbsolutePressure pressure,
    Temperature temperature,
    double z,
    Gas gas) {
  private static final Source GAS_LAW = Source.definition("gas law, R 10.73158 psia ft3/lbmol °R");

  Working factor() {
    Working working = spec.zLaw() == ZLaw.BRILL_BEGGS ? brillBeggs() : dranchukAbouKassem();
    boolean fitted = critical.equals(PseudoCritical.sutton(spec.gravityToAir()));
    return fitted
        ? working.from(
            List.of(
                critical.reducedTemperatureWorking(spec.gravityToAir(), temperature),
                critical.reducedPressureWorking(spec.gravityToAir(), pressure)))
        : working;
  }

  Working density() {
    return Working.of(
            "Density of the gas",
            "rho",
            "P*28.964*g/(z*10.73158*(T+459.67))",
            Unit.POUND_PER_CUBIC_FOOT,
            GAS_LAW,
            Term.of("P", "absolute pressure", pressure.toPsia(), Unit.PSI),
            Term.number("g", "gravity of the gas, air 1", spec.gravityToAir()),
            Term.number("z", "compressibility factor", z),
            Term.of("T", "temperature", temperature, Unit.FAHRENHEIT))
        .from(List.of(factor()));
  }

  private Working dranchukAbouKassem() {
    double tr = critical.reduced(temperature);
    double pr = critical.reduced(pressure);
    DranchukAbouKassem law = new DranchukAbouKassem(tr);
    return Working.of(
        "Compressibility factor (the root put back into the equation)",
        "z",
        "1+c1*r+c2*r^2-c3*r^5+0.6134*(1+0.721*r^2)*r^2/Tr^3*2.718281828^(0-0.721*r^2)",
        Unit.ONE,
        spec.zLaw().source(),
        Term.number("r", "reduced density at the root, 0.27 Pr/(z Tr)", 0.27 * pr / (z * tr)),
        Term.number("Tr", "reduced temperature", tr),
        Term.number("c1", "0.3265-1.07/Tr-0.5339/Tr³+0.01569/Tr⁴-0.05165/Tr⁵", law.c1),
        Term.number("c2", "0.5475-0.7361/Tr+0.1844/Tr²", law.c2),
        Term.number("c3", "0.1056 (0.1844/Tr²-0.7361/Tr)", law.c3));
  }

  private Working brillBeggs() {
    return Working.of(
        "Compressibility factor",
        "z",
        "A+(1-A)/2.718281828^((0.62-0.23*Tr)*Pr+(0.066/(Tr-0.86)-0.037)*Pr^2"
            + "+0.32*Pr^6/10^(9*(Tr-1)))"
            + "+(0.132-0.32*log10(Tr))*Pr^(10^(0.3106-0.49*Tr+0.1824*Tr^2))",
        Unit.ONE,
        spec.zLaw().source(),
        Term.number("A", "1.39 (Tr-0.92)^0.5-0.36 Tr-0.101", brillBeggsA()),
        Term.number("Tr", "reduced temperature", critical.reduced(temperature)),
        Term.number("Pr", "reduced pressure", critical.reduced(pressure)));
  }

  private double brillBeggsA() {
    double tr = critical.reduced(temperature);
    return 1.39 * Math.sqrt(tr - 0.92) - 0.36 * tr - 0.101;
  }
}
