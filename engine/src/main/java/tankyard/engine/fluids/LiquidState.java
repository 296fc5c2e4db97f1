package tankyard.engine.fluids;

import java.util.List;
import java.util.stream.Stream;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;

/**
 * A liquid at one temperature with its workings.
 *
 * @param name what it is: "oil", "brine" or "oil and water"
 * @param gravity density at this temperature against fresh water at 60 degF
 */
public record LiquidState(
    String name,
    Temperature temperature,
    Computed<Gravity> gravity,
    Computed<Viscosity> viscosity,
    List<Caution> cautions) {

  public LiquidState {
    cautions = List.copyOf(cautions);
  }

  static LiquidState of(
      String name,
      Temperature temperature,
      Computed<Gravity> gravity,
      Computed<Viscosity> viscosity) {
    List<Caution> all =
        Stream.concat(gravity.cautions().stream(), viscosity.cautions().stream())
            .distinct()
            .toList();
    return new LiquidState(name, temperature, gravity, viscosity, all);
  }

  public Liquid liquid() {
    return new Liquid(
        gravity.value().specific() * Water.DENSITY_AT_60F, viscosity.value().pascalSeconds());
  }

  static Gravity gravityOf(double densityKgPerM3) {
    return Gravity.of(densityKgPerM3 / Water.DENSITY_AT_60F, Unit.SPECIFIC_GRAVITY);
  }
}
