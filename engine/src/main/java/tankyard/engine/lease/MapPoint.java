package tankyard.engine.lease;

import tankyard.engine.units.Length;

/** A place on the lease map, east and north of the site datum. */
public record MapPoint(Length east, Length north) {
  public static MapPoint ofFeet(double east, double north) {
    return new MapPoint(Length.ofFeet(east), Length.ofFeet(north));
  }

  public double metresTo(MapPoint other) {
    return Math.hypot(other.east.metres() - east.metres(), other.north.metres() - north.metres());
  }
}
