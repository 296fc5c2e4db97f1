package tankyard.engine.study;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Service;
import tankyard.engine.pipes.FlowRegime;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Viscosity;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;

/**
 * What one line does in one case.
 *
 * @param flow the rate its loss is taken at, positive from its start to its end
 * @param flowWords why that rate: "running rate x 3 for the stroke"
 * @param length of pipe
 * @param lift pressure from the difference in height up to its control point
 * @param friction up to its control point
 * @param start pressure at its start
 * @param end pressure at its end
 * @param velocityFtPerS of the liquid in the full pipe
 * @param reynolds number
 * @param crest the high point that governs, if one does
 * @param rating what the pipe stands at its temperature with what is in it
 * @param viscosity of what it carries at the temperature of the ground
 * @param oilCarries whether the oil carries the water in it, so that it is thick as oil
 * @param restart where it gels when it stands
 * @param gas where gas comes with the liquid: then the velocity is that of both together
 */
@RecordBuilder
public record LineResult(
    String lineId,
    Service service,
    LiquidRate flow,
    String flowWords,
    Length length,
    Computed<Pressure> lift,
    Computed<Pressure> friction,
    Pressure start,
    Pressure end,
    double velocityFtPerS,
    double reynolds,
    String regime,
    Optional<Crest> crest,
    Optional<Pressure> rating,
    Volume contents,
    Computed<Viscosity> viscosity,
    boolean oilCarries,
    LineTemperatures temperatures,
    Optional<Restart> restart,
    LineProfile profile,
    Optional<GasInLine> gas)
    implements LineResultBuilder.With {

  /** Coldest of the 394 oils that Ng and Egbogah 1983 drew their correlation from. */
  private static final double COLD_F = 59;

  /** The point past which the line runs part full. */
  public record Crest(Length distance, tankyard.engine.units.Elevation pipe) {}

  /**
   * Laminar flow of oil below 59 degF, colder than any published viscosity was measured at: such a
   * loss carries a factor of two.
   */
  public boolean isColdLaminar() {
    return oilCarries
        && regime.equals(FlowRegime.LAMINAR.words())
        && temperatures.ground().toFahrenheit() < COLD_F;
  }

  /** From its start to its end. */
  public List<PipePoint> points() {
    return profile.points();
  }

  /** Where it runs part full, each stretch to where the hydraulic grade meets the pipe. */
  public List<LineProfile.Stretch> partFull() {
    return profile.partFull();
  }

  /** The highest pressure anywhere along it. */
  public Pressure highest() {
    return profile.highest();
  }
}
