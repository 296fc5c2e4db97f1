package tankyard.engine.lease;

import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Viscosity;

/**
 * What the wells make.
 *
 * @param oil gravity at 60 degF
 * @param brine gravity at 60 degF
 * @param oilViscosity measured points, if any; two make a line over temperature
 * @param pourPoint of the oil, below which it no longer runs by itself
 * @param gelStrength shear stress at which oil that stood cold begins to move again
 * @param gasGravity of the wells' gas against air
 * @param inversion water share above which the water carries the oil
 * @param tightness how thick their emulsion is below that share
 */
public record Fluids(
    Gravity oil,
    Gravity brine,
    List<MeasuredViscosity> oilViscosity,
    Optional<Temperature> pourPoint,
    Optional<Pressure> gelStrength,
    Optional<Fraction> inversion,
    Optional<Tightness> tightness,
    Optional<Fraction> gasGravity) {
  public Fluids {
    oilViscosity = List.copyOf(oilViscosity);
  }

  /** How tightly an emulsion holds its drops of water. */
  public enum Tightness {
    LOOSE,
    MEDIUM,
    TIGHT
  }

  /** One viscosity from the lab. */
  public record MeasuredViscosity(Temperature temperature, Viscosity viscosity) {}

  public static Fluids of(Gravity oil, Gravity brine) {
    return new Fluids(
        oil,
        brine,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
