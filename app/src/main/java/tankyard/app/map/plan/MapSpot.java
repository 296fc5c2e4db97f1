package tankyard.app.map.plan;

import tankyard.engine.lease.MapPoint;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;

/** A place on the map in metres east and north of the datum, for sums and drawing. */
public record MapSpot(double eastM, double northM) {
  /** Keeps a place that was rounded in feet from showing the noise of going through metres. */
  private static final double GRAIN = 1e6;

  public static MapSpot of(MapPoint point) {
    return new MapSpot(point.east().metres(), point.north().metres());
  }

  /** The same place as the document keeps it, typed in a unit of length. */
  public MapPoint toMapPoint(Unit unit) {
    return new MapPoint(length(eastM, unit), length(northM, unit));
  }

  private static Length length(double metres, Unit unit) {
    return Length.of(Math.rint(unit.fromSi(metres) * GRAIN) / GRAIN, unit);
  }

  public MapSpot plus(double east, double north) {
    return new MapSpot(eastM + east, northM + north);
  }

  public double metresTo(MapSpot other) {
    return Math.hypot(other.eastM - eastM, other.northM - northM);
  }

  /** The point a share of the way to another. */
  public MapSpot towards(MapSpot other, double share) {
    return new MapSpot(
        eastM + share * (other.eastM - eastM), northM + share * (other.northM - northM));
  }
}
