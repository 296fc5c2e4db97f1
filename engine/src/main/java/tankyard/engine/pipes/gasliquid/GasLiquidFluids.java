package tankyard.engine.pipes.gasliquid;

import java.util.Objects;
import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.fluids.GasModel;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.units.Temperature;

/**
 * What flows through a gas-liquid line at one temperature.
 *
 * @param tensionNPerM surface tension; {@link #USUAL_TENSION} where it is not known
 */
public record GasLiquidFluids(
    Liquid liquid, GasModel gas, Temperature temperature, double tensionNPerM) {
  /** N/m, crude and gas near the surface; common practice, no source. */
  public static final double USUAL_TENSION = 0.025;

  public GasLiquidFluids {
    Objects.requireNonNull(liquid, "liquid");
    Objects.requireNonNull(gas, "gas");
    Objects.requireNonNull(temperature, "temperature");
  }

  Phases at(AbsolutePressure pressure) {
    return new Phases(liquid, gas.at(pressure, temperature), tensionNPerM);
  }

  /** m3 of gas here for each standard m3. */
  double gasVolume(Phases phases) {
    return gas.standardDensityKgPerM3() / phases.gas().densityKgPerM3();
  }
}
