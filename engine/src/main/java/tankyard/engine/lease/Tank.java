package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Volume;

/**
 * A stock tank or a water tank. All heights are above its own bottom, which stands on its ground.
 *
 * @param model catalogue item it is bought as
 * @param diameter outside
 * @param overflowHeight lip of its overflow
 * @param inletHeight of the inlet line where it enters
 * @param outletHeight sales outlet of an oil tank: what lies below is bottoms
 * @param switchHeight high-level switch
 * @param pumpOn level at which the injection pump starts
 * @param pumpOff level at which it stops
 * @param load what a truck takes
 * @param ventBore clear bore of the vent on its roof; without it what the roof feels is not checked
 * @param ventLifts pressure at which the vent lets out; none for an open pipe
 * @param ventDraws vacuum at which it lets air in; none for an open pipe
 * @param roofPressure most pressure under the roof; by the catalogue where it is not said
 * @param roofVacuum most vacuum under the roof; by the catalogue where it is not said
 */
@RecordBuilder
public record Tank(
    String id,
    String name,
    MapPoint at,
    Optional<Elevation> ground,
    Status status,
    Duty duty,
    Optional<String> model,
    Length diameter,
    Length shellHeight,
    Length overflowHeight,
    Length inletHeight,
    Entry entry,
    Optional<Length> outletHeight,
    Optional<Length> switchHeight,
    Optional<Length> pumpOn,
    Optional<Length> pumpOff,
    Optional<Volume> load,
    Optional<Length> ventBore,
    Optional<Pressure> ventLifts,
    Optional<Pressure> ventDraws,
    Optional<Pressure> roofPressure,
    Optional<Pressure> roofVacuum)
    implements Thing {

  /** What it holds. */
  public enum Duty {
    OIL,
    WATER
  }

  /** How the inlet line enters: over the top, or low with the level standing against it. */
  public enum Entry {
    TOP,
    BOTTOM
  }

  @Override
  public String kind() {
    return duty == Duty.OIL ? "oil tank" : "water tank";
  }

  @Override
  public Tank movedTo(MapPoint place) {
    return TankBuilder.builder(this).at(place).build();
  }

  @Override
  public Tank renamed(String newName) {
    return TankBuilder.builder(this).name(newName).build();
  }

  @Override
  public Tank withId(String newId) {
    return TankBuilder.builder(this).id(newId).build();
  }

  @Override
  public Tank withStatus(Status newStatus) {
    return TankBuilder.builder(this).status(newStatus).build();
  }

  @Override
  public Tank withGround(Optional<Elevation> newGround) {
    return TankBuilder.builder(this).ground(newGround).build();
  }
}
