package tankyard.engine.report.map;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Outlined;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.SpotHeight;
import tankyard.engine.lease.Thing;

/** How far a lease, or a part of it, reaches over the ground. */
final class Extent {
  /** A single thing is shown with this much ground around it, in metres. */
  private static final double LEAST_M = 20;

  private Extent() {}

  static Rectangle2D of(Lease lease) {
    Stream<MapPoint> things = standing(lease).stream().map(Thing::at);
    Stream<MapPoint> routes =
        lease.lines().stream().flatMap(l -> l.route().stream()).map(RoutePoint::at);
    Stream<MapPoint> heights = lease.spotHeights().stream().map(SpotHeight::at);
    Stream<MapPoint> outlines = lease.outlines().flatMap(o -> o.corners().stream());
    List<MapPoint> drawn = Stream.of(things, routes, outlines).flatMap(s -> s).toList();
    return of(drawn.isEmpty() ? heights.toList() : drawn);
  }

  /** The things with a symbol of their own, which is all that is not drawn corner by corner. */
  static List<Thing> standing(Lease lease) {
    return lease.things().filter(thing -> !(thing instanceof Outlined)).toList();
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
