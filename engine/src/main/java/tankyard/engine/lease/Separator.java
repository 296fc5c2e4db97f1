package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;

/**
 * A liquid-full oil and water separator. All heights are above its own ground.
 *
 * @param model catalogue item it is bought as
 * @param diameter inside
 * @param length seam to seam; the height of a vertical one
 * @param bottomHeight lowest point of the shell; if not said, the interface is taken to stand
 *     mid-vessel
 * @param interfaceHeight where the float holds the oil and water level
 * @param oilOutletHeight where the regulator sits
 * @param waterOutletHeight where the dump valve sits
 * @param nameplate its rated pressure; without a nameplate it is not known
 * @param relief what its relief valve is set to
 * @param gaugeRange the highest reading of its gauge
 * @param otherWater the water it may come to, as when a flood freshens it
 */
@RecordBuilder
public record Separator(
    String id,
    String name,
    MapPoint at,
    Optional<Elevation> ground,
    Status status,
    Optional<String> model,
    Shape shape,
    Length diameter,
    Length length,
    Optional<Length> bottomHeight,
    Length inletHeight,
    Length interfaceHeight,
    Length gaugeHeight,
    Length oilOutletHeight,
    Length waterOutletHeight,
    Optional<Pressure> nameplate,
    Optional<Pressure> relief,
    Optional<Pressure> gaugeRange,
    Optional<Gravity> otherWater,
    DumpValve dumpValve,
    Regulator regulator)
    implements Vessel {

  /** How it lies. */
  public enum Shape {
    HORIZONTAL,
    VERTICAL
  }

  @Override
  public String kind() {
    return "separator";
  }

  @Override
  public Separator movedTo(MapPoint place) {
    return SeparatorBuilder.builder(this).at(place).build();
  }

  @Override
  public Separator renamed(String newName) {
    return SeparatorBuilder.builder(this).name(newName).build();
  }

  @Override
  public Separator withId(String newId) {
    return SeparatorBuilder.builder(this).id(newId).build();
  }

  @Override
  public Separator withStatus(Status newStatus) {
    return SeparatorBuilder.builder(this).status(newStatus).build();
  }

  @Override
  public Separator withGround(Optional<Elevation> newGround) {
    return SeparatorBuilder.builder(this).ground(newGround).build();
  }
}
