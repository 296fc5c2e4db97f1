package tankyard.app.map.plan;

import java.util.Collection;
import java.util.Optional;

/** An upright rectangle on the map, in metres. */
public record MapBox(double westM, double southM, double eastM, double northM) {

  public static MapBox between(MapSpot a, MapSpot b) {
    return new MapBox(
        Math.min(a.eastM(), b.eastM()),
        Math.min(a.northM(), b.northM()),
        Math.max(a.eastM(), b.eastM()),
        Math.max(a.northM(), b.northM()));
  }

  /** The smallest box around all spots; empty where there are none. */
  public static Optional<MapBox> around(Collection<MapSpot> spots) {
    return spots.stream().map(s -> between(s, s)).reduce(MapBox::with);
  }

  public MapBox with(MapBox other) {
    return new MapBox(
        Math.min(westM, other.westM),
        Math.min(southM, other.southM),
        Math.max(eastM, other.eastM),
        Math.max(northM, other.northM));
  }

  public double widthM() {
    return eastM - westM;
  }

  public double heightM() {
    return northM - southM;
  }

  public MapSpot centre() {
    return new MapSpot((westM + eastM) / 2, (southM + northM) / 2);
  }

  public boolean contains(MapSpot spot) {
    return spot.eastM() >= westM
        && spot.eastM() <= eastM
        && spot.northM() >= southM
        && spot.northM() <= northM;
  }
}
