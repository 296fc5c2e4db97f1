package tankyard.engine.report.map;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.SpotHeight;
import tankyard.engine.lease.Thing;

/** How far a lease, or a part of it, reaches over the ground. */
final class Extent {
  /** A single thing is shown with this much ground around it, in metres. */
  private static final double LEAST_M = 20;

  private Extent() {}

  static Rectangle2D of(Lease lease) {
    Stream<MapPoint> things = lease.things().map(Thing::at);
    Stream<MapPoint> routes =
        lease.lines().stream().flatMap(l -> l.route().stream()).map(RoutePoint::at);
    Stream<MapPoint> heights = lease.spotHeights().stream().map(SpotHeight::at);
    Stream<MapPoint> berm = lease.site().berm().stream().flatMap(Extent::corners);
    List<MapPoint> drawn = Stream.of(things, routes, berm).flatMap(s -> s).toList();
    return of(drawn.isEmpty() ? heights.toList() : drawn);
  }

  static Stream<MapPoint> corners(Berm berm) {
    double east = berm.corner().east().toFeet() + berm.length().toFeet();
    double north = berm.corner().north().toFeet() + berm.width().toFeet();
    return Stream.of(berm.corner(), MapPoint.ofFeet(east, north));
  }

  static Rectangle2D of(List<MapPoint> places) {
    double west = places.stream().mapToDouble(p -> p.east().metres()).min().orElse(0);
    double east = places.stream().mapToDouble(p -> p.east().metres()).max().orElse(0);
    double south = places.stream().mapToDouble(p -> p.north().metres()).min().orElse(0);
    double north = places.stream().mapToDouble(p -> p.north().metres()).max().orElse(0);
    double wide = Math.max(east - west, LEAST_M);
    double high = Math.max(north - south, LEAST_M);
    return new Rectangle2D.Double((west + east - wide) / 2, (south + north - high) / 2, wide, high);
  }
}
