package tankyard.engine.fluids;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Working;

/**
 * Oil with gas in solution: thinner than in the tank. The bubble point by Standing, the viscosity
 * up to it by Beggs and Robinson 1975 from that of the dead oil, above it by Vasquez and Beggs
 * 1980.
 *
 * <p>Dead oil: by measured points where the oil has some, else by Beggs and Robinson, which is for
 * 70 to 295 degF and far too thick below about 100. On a lease the gas is out of the oil before the
 * flow line, so dead oil is the usual case; this is for lines under pressure.
 */
public final class LiveOil {
  private final OilSpec oil;
  private final double gasGravity;
  private final double solutionGas;

  /**
   * An oil and its gas.
   *
   * @param gasGravityToAir of the gas in solution
   * @param solutionGasScfPerBbl all the gas the oil holds at its bubble point
   */
  public LiveOil(OilSpec oil, double gasGravityToAir, double solutionGasScfPerBbl) {
    this.oil = oil;
    gasGravity = gasGravityToAir;
    solutionGas = solutionGasScfPerBbl;
    if (!(gasGravityToAir > 0 && solutionGasScfPerBbl >= 0)) {
      throw new IllegalArgumentException(
          "Gas in the oil needs a gravity above zero and a ratio not below it: "
              + gasGravityToAir
              + ", "
              + solutionGasScfPerBbl
              + " scf/bbl");
    }
  }

  /** Where the first bubble comes out, absolute Pa; zero or below where none is in solution. */
  public double bubblePointPascals(Temperature temperature) {
    return Unit.PSI.toSi(Standing.bubblePointPsia(solutionGas, gasGravity, api(), temperature));
  }

  /** scf/bbl in solution at a pressure: all of it from the bubble point upwards. */
  public double dissolvedScfPerBbl(AbsolutePressure pressure, Temperature temperature) {
    return Math.min(
        solutionGas, Standing.solutionGas(pressure.toPsia(), gasGravity, api(), temperature));
  }

  public Computed<Viscosity> viscosity(AbsolutePressure pressure, Temperature temperature) {
    Computed<Viscosity> dead = dead(temperature);
    double rs = dissolvedScfPerBbl(pressure, temperature);
    Saturated saturated = new Saturated(dead, rs);
    List<Caution> cautions = cautions(dead, rs);
    // With next to no gas the law's bubble point falls below the air's pressure.
    double bubble = Math.max(bubblePointPascals(temperature), AbsolutePressure.STANDARD.pascals());
    if (pressure.pascals() <= bubble || solutionGas == 0) {
      return Computed.of(saturated.viscosity(), saturated::working).with(cautions);
    }
    VasquezBeggs above =
        new VasquezBeggs(saturated.viscosity(), Unit.PSI.fromSi(bubble), pressure.toPsia());
    Working bubbleWorking = Standing.working(solutionGas, gasGravity, api(), temperature);
    return Computed.of(
            above.viscosity(),
            () -> above.working().from(List.of(saturated.working(), bubbleWorking)))
        .with(cautions);
  }

  private Computed<Viscosity> dead(Temperature temperature) {
    return oil.measured().isEmpty()
        ? new BeggsRobinsonDead(api()).at(temperature)
        : new Oil(oil).at(temperature).viscosity();
  }

  private double api() {
    return oil.api();
  }

  private static List<Caution> cautions(Computed<Viscosity> dead, double rs) {
    List<Caution> said = new ArrayList<>(dead.cautions());
    if (rs > 0 && (rs < 20 || rs > 2070)) {
      said.add(
          new Caution(
              "solution-gas-out-of-range",
              Figures.significant(rs, 3)
                  + " scf/bbl in solution is outside the 20 to 2,070 of the viscosity law for oil"
                  + " with gas in it."));
    }
    return said;
  }
}
