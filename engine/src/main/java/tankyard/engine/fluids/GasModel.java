package tankyard.engine.fluids;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;

/** The lease's gas at any absolute pressure and temperature. */
public final class GasModel {
  /** kg/kmol; the trade's round figure for air is 28.964. */
  static final double AIR_MOLAR_MASS = 28.964;

  /** J/(kmol K), exact since 2019. */
  static final double GAS_CONSTANT = 8314.462618;

  /** 60 degF. */
  private static final double STANDARD_K = 288.70555555555555;

  private final GasSpec spec;
  private final PseudoCritical critical;
  private final double molarMass;

  public GasModel(GasSpec spec) {
    this(spec, PseudoCritical.sutton(spec.gravityToAir()));
  }

  /** With pseudo-criticals that were measured. */
  public GasModel(GasSpec spec, PseudoCritical critical) {
    this.spec = spec;
    this.critical = critical;
    molarMass = AIR_MOLAR_MASS * spec.gravityToAir();
  }

  /** At standard conditions, where the gas is counted as ideal; kg/m3. */
  public double standardDensityKgPerM3() {
    return AbsolutePressure.STANDARD.pascals() * molarMass / (GAS_CONSTANT * STANDARD_K);
  }

  public double z(AbsolutePressure pressure, Temperature temperature) {
    return spec.zLaw().at(critical.reduced(temperature), critical.reduced(pressure));
  }

  /** Density and viscosity alone, for marching. */
  public Gas at(AbsolutePressure pressure, Temperature temperature) {
    double density = density(pressure, temperature, z(pressure, temperature));
    double centipoise =
        new LeeGonzalezEakin(spec.gravityToAir(), temperature, density).centipoise();
    return new Gas(density, 1e-3 * centipoise);
  }

  /** The same with workings and cautions. */
  public GasState state(AbsolutePressure pressure, Temperature temperature) {
    double z = z(pressure, temperature);
    Gas gas = at(pressure, temperature);
    List<Caution> cautions = cautions(pressure, temperature);
    GasWorking working = new GasWorking(spec, critical, pressure, temperature, z, gas);
    Computed<Fraction> factor =
        Computed.of(Fraction.of(z, Unit.ONE), working::factor).with(cautions);
    Computed<Viscosity> viscosity =
        Computed.of(
            Viscosity.ofCentipoise(1e3 * gas.viscosityPaS()),
            () ->
                new LeeGonzalezEakin(spec.gravityToAir(), temperature, gas.densityKgPerM3())
                    .working()
                    .from(List.of(working.density())));
    return new GasState(pressure, temperature, factor, gas, working.density(), viscosity, cautions);
  }

  private double density(AbsolutePressure pressure, Temperature temperature, double z) {
    return pressure.pascals() * molarMass / (z * GAS_CONSTANT * temperature.kelvins());
  }

  private List<Caution> cautions(AbsolutePressure pressure, Temperature temperature) {
    List<Caution> said = new ArrayList<>();
    double tr = critical.reduced(temperature);
    double pr = critical.reduced(pressure);
    if (!spec.zLaw().covers(tr, pr)) {
      said.add(
          new Caution(
              "gas-z-out-of-range",
              "Reduced temperature "
                  + Figures.significant(tr, 3)
                  + " and pressure "
                  + Figures.significant(pr, 3)
                  + " are outside the range of the gas law; have the gas analysed."));
    }
    double g = spec.gravityToAir();
    if (g < PseudoCritical.LIGHTEST || g > PseudoCritical.HEAVIEST) {
      said.add(
          new Caution(
              "gas-gravity-out-of-range",
              "A gas gravity of "
                  + Figures.significant(g, 3)
                  + " is outside the 0.57 to 1.68 of the pseudo-critical fit; have the gas"
                  + " analysed."));
    }
    double fahrenheit = temperature.toFahrenheit();
    if (fahrenheit < 100 || fahrenheit > 340) {
      said.add(
          new Caution(
              "gas-viscosity-out-of-range",
              Said.temperature(temperature)
                  + " is outside the 100 to 340 °F of the gas viscosity law; near it the error is"
                  + " small."));
    }
    return said;
  }
}
