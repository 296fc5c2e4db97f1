package tankyard.engine.lease;

import java.util.List;
import java.util.function.Function;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;

/** A place on the lease map, east and north of the site datum. */
public record MapPoint(Length east, Length north) {
  /**
   * Below the width of a pencil on any map; keeps 304.8 m from coming out as 1000.0000000001 ft.
   */
  private static final double GRAIN = 1e6;

  public static MapPoint ofFeet(double east, double north) {
    return new MapPoint(Length.ofFeet(east), Length.ofFeet(north));
  }

  /** The mean of one or more places, in the unit of the first. */
  static MapPoint middle(List<MapPoint> places) {
    return new MapPoint(mean(places, MapPoint::east), mean(places, MapPoint::north));
  }

  private static Length mean(List<MapPoint> places, Function<MapPoint, Length> way) {
    double metres = places.stream().map(way).mapToDouble(Length::metres).average().orElseThrow();
    return rounded(metres, way.apply(places.get(0)).typed().unit());
  }

  public double metresTo(MapPoint other) {
    return Math.hypot(other.east.metres() - east.metres(), other.north.metres() - north.metres());
  }

  /** The place so far east and north of it, in the unit it was typed in. */
  public MapPoint shifted(double eastM, double northM) {
    return new MapPoint(
        rounded(east.metres() + eastM, east.typed().unit()),
        rounded(north.metres() + northM, north.typed().unit()));
  }

  private static Length rounded(double metres, Unit unit) {
    return Length.of(Math.rint(unit.fromSi(metres) * GRAIN) / GRAIN, unit);
  }
}
