package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;

/**
 * A tall tank open to the air in which oil and water part by weight alone. The water leaves from
 * the bottom, up a leg, over a weir and down a downcomer, from whose foot the water leg leads on.
 * Its heights are above its own bottom, which stands on its ground.
 *
 * @param model catalogue item it is bought as
 * @param diameter inside
 * @param inletHeight where the flow line enters; above the oil outlet it falls in from overhead
 * @param oilOutletHeight where the oil runs off: the level it stands at
 * @param interfaceHeight where the water is wanted to stand
 * @param weirHeight the weir as cut; worked out for the wanted interface if not said
 * @param nipple how far the weir can be set up or down
 * @param legPipe of the leg, up to the weir
 * @param legLength of the leg, its fittings counted as pipe
 * @param downcomerPipe from the weir down; the leg's if not said
 * @param vent at the top of the leg
 * @param otherWater the water it may come to, as when a flood freshens it
 * @param otherOil the oil it may come to
 */
@RecordBuilder
public record GunBarrel(
    String id,
    String name,
    MapPoint at,
    Optional<Elevation> ground,
    Status status,
    Optional<String> model,
    Length diameter,
    Length shellHeight,
    Length inletHeight,
    Length oilOutletHeight,
    Length interfaceHeight,
    Optional<Length> weirHeight,
    Optional<Length> nipple,
    String legPipe,
    Optional<Length> legLength,
    Optional<String> downcomerPipe,
    Optional<Vent> vent,
    Optional<Gravity> otherWater,
    Optional<Gravity> otherOil)
    implements Vessel {

  /** Whether the top of the leg breathes the same air as the vessel. */
  public enum Vent {
    OPEN,
    NONE
  }

  @Override
  public String kind() {
    return "gun barrel";
  }

  @Override
  public GunBarrel movedTo(MapPoint place) {
    return GunBarrelBuilder.builder(this).at(place).build();
  }

  @Override
  public GunBarrel renamed(String newName) {
    return GunBarrelBuilder.builder(this).name(newName).build();
  }

  @Override
  public GunBarrel withId(String newId) {
    return GunBarrelBuilder.builder(this).id(newId).build();
  }

  @Override
  public GunBarrel withStatus(Status newStatus) {
    return GunBarrelBuilder.builder(this).status(newStatus).build();
  }

  @Override
  public GunBarrel withGround(Optional<Elevation> newGround) {
    return GunBarrelBuilder.builder(this).ground(newGround).build();
  }
}
