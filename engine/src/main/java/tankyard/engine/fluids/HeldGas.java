package tankyard.engine.fluids;

import java.util.Objects;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * The gas that oil still holds at a pressure, counted from what it holds in an open tank:
 * Standing's law at that pressure less the same law at the air's.
 *
 * <p>A lease's gas is what was metered off the oil, so none of it is in the tank's oil; the law
 * itself leaves a few scf/bbl there, which the metered gas does not contain. Water holds none.
 */
public final class HeldGas {
  private static final Source SOURCE =
      Source.memory("Standing 1947, gas in solution, less what it leaves at the air's pressure");

  private final OilSpec oil;
  private final double gasGravity;
  private final Temperature temperature;
  private final AbsolutePressure air;
  private final double inTheTank;

  public HeldGas(
      OilSpec oil, double gasGravityToAir, Temperature temperature, AbsolutePressure air) {
    this.oil = Objects.requireNonNull(oil, "oil");
    this.temperature = Objects.requireNonNull(temperature, "temperature");
    this.air = Objects.requireNonNull(air, "air");
    gasGravity = gasGravityToAir;
    inTheTank = Standing.solutionGas(air.toPsia(), gasGravity, oil.api(), temperature);
  }

  /** Not below zero. */
  public double scfPerBbl(AbsolutePressure pressure) {
    double held = Standing.solutionGas(pressure.toPsia(), gasGravity, oil.api(), temperature);
    return Math.max(0, held - inTheTank);
  }

  public Working working(AbsolutePressure pressure) {
    return Working.of(
        "Gas the oil holds here and not in an open tank, scf/bbl",
        "Rs",
        "max(0,g*(((P/18.2+1.4)/10^(0.00091*T-0.0125*API))^(1/0.83)"
            + "-((Pa/18.2+1.4)/10^(0.00091*T-0.0125*API))^(1/0.83)))",
        Unit.ONE,
        SOURCE,
        Term.number("g", "gravity of the gas, air 1", gasGravity),
        Term.of("P", "absolute pressure", pressure.toPsia(), Unit.PSI),
        Term.of("Pa", "of the air", air.toPsia(), Unit.PSI),
        Term.of("T", "temperature", temperature, Unit.FAHRENHEIT),
        Term.of("API", "gravity of the oil", oil.api(), Unit.DEGREE_API));
  }
}
