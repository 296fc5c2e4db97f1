package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Current;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Power;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Time;

/**
 * A pumping well.
 *
 * @param oil day's average
 * @param water day's average
 * @param gas day's average
 * @param runsPerDay hours a day the pump runs; the clock round if not said
 * @param surge the peak of the pump's stroke over its mean while running, felt on a line it has to
 *     itself
 * @param boxHeight stuffing box above the ground
 * @param boxLimit the most pressure its stuffing box is trusted with
 * @param headTemperature of what leaves it; the ground's if not said, which errs on the thick side
 * @param returnedWater water of the lease that is brought back and put into its line at the well
 * @param motor nameplate power, where it runs on electricity
 * @param motorAmps on its nameplate
 * @param wire from the nearest power pole to its motor
 */
@RecordBuilder
public record Well(
    String id,
    String name,
    MapPoint at,
    Optional<Elevation> ground,
    Status status,
    LiquidRate oil,
    LiquidRate water,
    Optional<GasRate> gas,
    Optional<Time> runsPerDay,
    Optional<Fraction> surge,
    Optional<Length> boxHeight,
    Optional<Pressure> boxLimit,
    Optional<Temperature> headTemperature,
    Optional<LiquidRate> returnedWater,
    Optional<Power> motor,
    Optional<Current> motorAmps,
    Optional<Wire> wire)
    implements MotorDriven {

  @Override
  public String kind() {
    return "well";
  }

  @Override
  public Well movedTo(MapPoint place) {
    return WellBuilder.builder(this).at(place).build();
  }

  @Override
  public Well renamed(String newName) {
    return WellBuilder.builder(this).name(newName).build();
  }

  @Override
  public Well withId(String newId) {
    return WellBuilder.builder(this).id(newId).build();
  }

  @Override
  public Well withStatus(Status newStatus) {
    return WellBuilder.builder(this).status(newStatus).build();
  }

  @Override
  public Well withGround(Optional<Elevation> newGround) {
    return WellBuilder.builder(this).ground(newGround).build();
  }
}
