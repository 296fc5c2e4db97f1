package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Time;
import tankyard.engine.units.WellResistance;

/**
 * Where the water goes.
 *
 * @param pressureAtNoFlow wellhead pressure it holds with nothing going in
 * @param resistance how much the wellhead pressure rises with the rate while pumping
 * @param permitPressure the most the permit allows at the wellhead
 * @param permitRate the most the permit allows in a day
 * @param depth to the top of the injection zone
 * @param otherRate what another lease's pump puts in while it runs, where the well is shared
 * @param otherHours a day that pump runs
 */
@RecordBuilder
public record InjectionWell(
    String id,
    String name,
    MapPoint at,
    Optional<Elevation> ground,
    Status status,
    Length wellheadHeight,
    Pressure pressureAtNoFlow,
    WellResistance resistance,
    Optional<Pressure> permitPressure,
    Optional<LiquidRate> permitRate,
    Optional<Length> depth,
    Optional<LiquidRate> otherRate,
    Optional<Time> otherHours)
    implements Thing {

  @Override
  public String kind() {
    return "injection well";
  }

  @Override
  public InjectionWell movedTo(MapPoint place) {
    return InjectionWellBuilder.builder(this).at(place).build();
  }

  @Override
  public InjectionWell renamed(String newName) {
    return InjectionWellBuilder.builder(this).name(newName).build();
  }

  @Override
  public InjectionWell withId(String newId) {
    return InjectionWellBuilder.builder(this).id(newId).build();
  }

  @Override
  public InjectionWell withStatus(Status newStatus) {
    return InjectionWellBuilder.builder(this).status(newStatus).build();
  }

  @Override
  public InjectionWell withGround(Optional<Elevation> newGround) {
    return InjectionWellBuilder.builder(this).ground(newGround).build();
  }
}
