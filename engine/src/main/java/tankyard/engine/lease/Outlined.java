package tankyard.engine.lease;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Elevation;

/**
 * A thing drawn corner by corner on the ground: a berm, or a landmark. No line ends at it, and it
 * has no height of its own.
 */
public sealed interface Outlined extends Thing permits Berm, Landmark {

  /** In order, one or more. */
  List<MapPoint> corners();

  /** Whether a side runs from the last corner back to the first. */
  boolean closes();

  /** The fewest corners it can have. */
  int fewestCorners();

  Outlined withOutline(List<MapPoint> newCorners);

  @Override
  default boolean takesLines() {
    return false;
  }

  /** Between its corners. */
  @Override
  default MapPoint at() {
    return MapPoint.middle(corners());
  }

  @Override
  default Optional<Elevation> ground() {
    return Optional.empty();
  }

  /** The same: there is no one place to shoot a height at. */
  @Override
  default Outlined withGround(Optional<Elevation> newGround) {
    return this;
  }

  /** Shifted so that its middle comes there. */
  @Override
  default Outlined movedTo(MapPoint place) {
    MapPoint middle = at();
    double eastM = place.east().metres() - middle.east().metres();
    double northM = place.north().metres() - middle.north().metres();
    return withOutline(corners().stream().map(c -> c.shifted(eastM, northM)).toList());
  }

  /** With one more corner, which takes that position. */
  default Outlined withCorner(int index, MapPoint corner) {
    List<MapPoint> changed = new ArrayList<>(corners());
    changed.add(index, corner);
    return withOutline(changed);
  }

  /** With a corner elsewhere. */
  default Outlined withCornerAt(int index, MapPoint corner) {
    List<MapPoint> changed = new ArrayList<>(corners());
    changed.set(index, corner);
    return withOutline(changed);
  }

  default Outlined withoutCorner(int index) {
    List<MapPoint> changed = new ArrayList<>(corners());
    changed.remove(index);
    return withOutline(changed);
  }
}
