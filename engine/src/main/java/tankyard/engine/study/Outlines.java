package tankyard.engine.study;

import java.util.List;
import java.util.function.Function;
import tankyard.engine.lease.Landmark;
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

  /** The rings that tanks and vessels must stay out of, where a distance was typed. */
  public static List<List<double[]>> setback(Landmark landmark) {
    return landmark.setback().stream()
        .filter(far -> landmark.status().stays() && far.metres() > 0)
        .flatMap(far -> of(landmark).within(far.metres()).stream())
        .toList();
  }

  private static double[] metres(List<MapPoint> corners, Function<MapPoint, Length> way) {
    return corners.stream().map(way).mapToDouble(Length::metres).toArray();
  }
}
