package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.HeatLoss;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Time;
import tankyard.engine.units.Volume;

/**
 * The habits a battery is designed by. What is empty is taken from common practice and shown as
 * assumed.
 *
 * @param designWater design water rate over the day's average
 * @param margin added to the least gauge pressure
 * @param reliefShare of the relief setting that the gauge may reach
 * @param depth of buried lines
 * @param load what a truck takes
 * @param truckDraws what its pump draws
 * @param roadOut days the road can be shut
 * @param nightOut hours nobody looks at the lease
 * @param heatLoss of buried lines to the ground, on the outside area of the pipe
 * @param reaction from a high switch tripping until the wells stand still
 * @param waterDoubles time in which the water doubles, if it grows
 * @param pumpShare share of the day the injection pumps may come to run before it is time to act
 * @param treatAt temperature the oil would be heated to before it is sold, if a treater is thought
 *     of
 * @param treaterWater part of the water that comes to the treater, the rest knocked out before
 * @param treaterEfficiency from burner to liquid
 * @param atOnce share of the time that the rate taken for a line several wells share is not passed
 */
@RecordBuilder
public record Practice(
    Optional<Fraction> designWater,
    Optional<Pressure> margin,
    Optional<Fraction> reliefShare,
    Optional<Length> depth,
    Optional<Volume> load,
    Optional<LiquidRate> truckDraws,
    Optional<Time> roadOut,
    Optional<Time> nightOut,
    Optional<Time> waterDoubles,
    Optional<Fraction> pumpShare,
    Optional<HeatLoss> heatLoss,
    Optional<Time> reaction,
    Optional<Fraction> atOnce,
    Optional<Temperature> treatAt,
    Optional<Fraction> treaterWater,
    Optional<Fraction> treaterEfficiency) {

  public static Practice usual() {
    return PracticeBuilder.builder().build();
  }
}
