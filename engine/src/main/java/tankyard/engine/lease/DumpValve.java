package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;

/**
 * The float-worked valve on the water outlet.
 *
 * @param model catalogue item it is bought as
 * @param cv wide open
 * @param workingTravel share of full travel at which it works; half if not said
 * @param port bore of its seat; without it the float's pull is not checked
 * @param floatBall without it the float's pull is not checked
 */
@RecordBuilder
public record DumpValve(
    Optional<String> model,
    Cv cv,
    Optional<Fraction> workingTravel,
    Optional<Length> port,
    Optional<FloatBall> floatBall)
    implements DumpValveBuilder.With {

  /**
   * The float and its lever.
   *
   * @param weight of the whole ball against fresh water; it must lie between oil and brine
   * @param lever pull at the seat over pull at the ball
   */
  public record FloatBall(Length diameter, Gravity weight, Fraction lever) {}
}
