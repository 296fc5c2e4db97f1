package tankyard.engine.study;

import java.util.List;
import java.util.function.Function;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Outlined;
import tankyard.engine.terrain.Outline;
import tankyard.engine.units.Length;

/** What is drawn corner by corner, as a shape in metres. */
public final class Outlines {
  private Outlines() {}

  public static Outline of(Outlined thing) {
    return Outline.of(
        metres(thing.corners(), MapPoint::east),
        metres(thing.corners(), MapPoint::north),
        thing.closes());
  }

  public static boolean holds(Outlined thing, MapPoint place) {
    return holds(of(thing), place);
  }

  static boolean holds(Outline outline, MapPoint place) {
    return outline.holds(place.east().metres(), place.north().metres());
  }

  private static double[] metres(List<MapPoint> corners, Function<MapPoint, Length> way) {
    return corners.stream().map(way).mapToDouble(Length::metres).toArray();
  }
}
