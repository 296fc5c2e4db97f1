package tankyard.app.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Outlined;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.SpotHeight;
import tankyard.engine.lease.Thing;
import tankyard.engine.units.Elevation;

/**
 * Shifts what stands on the map and keeps what was measured there true.
 *
 * <p>A typed ground height is a height of the place, not of the thing that stood on it. So when a
 * thing or a corner moves, the height stays behind as a spot height of the lease, and the thing
 * reads its ground off the map from then on. In the same way a measured length of pipe belongs to
 * the route it was measured on: it goes when the route changes its shape, and stays when the whole
 * line is shifted with both its ends.
 */
final class Places {
  private Places() {}

  /** The thing at its new place, its typed ground height left behind. */
  static Lease moveThing(Lease lease, Thing thing, MapPoint to) {
    if (to.equals(thing.at())) {
      return lease;
    }
    return leaveHeight(lease, thing.at(), thing.ground())
        .with(thing.movedTo(to).withGround(Optional.empty()));
  }

  static Lease moveCorner(Lease lease, Line line, int index, MapPoint to) {
    RoutePoint corner = line.route().get(index);
    if (to.equals(corner.at())) {
      return lease;
    }
    List<RoutePoint> route = new ArrayList<>(line.route());
    route.set(index, new RoutePoint(to, Optional.empty(), corner.depth()));
    return leaveHeight(lease, corner.at(), corner.ground()).with(line.withRoute(route));
  }

  static Lease leaveHeight(Lease lease, MapPoint at, Optional<Elevation> ground) {
    boolean known = lease.spotHeights().stream().anyMatch(s -> s.at().equals(at));
    if (ground.isEmpty() || known) {
      return lease;
    }
    List<SpotHeight> heights = new ArrayList<>(lease.spotHeights());
    heights.add(new SpotHeight(at, ground.get()));
    return lease.withSpotHeights(heights);
  }

  /** The line with its length taken off the map again. */
  static Lease measureAnew(Lease lease, String lineId) {
    Line line = lease.line(lineId).orElseThrow();
    return line.length().isEmpty() ? lease : lease.with(line.withLength(Optional.empty()));
  }

  static Line line(Lease lease, String id) {
    return lease
        .line(id)
        .orElseThrow(() -> new EditRefusedException("There is no line " + id + " any more."));
  }

  static Thing thing(Lease lease, String id) {
    return lease
        .thing(id)
        .orElseThrow(() -> new EditRefusedException("There is no thing " + id + " any more."));
  }

  /** The berm or landmark with that id, if it is one. */
  static Optional<Outlined> outlined(Lease lease, String id) {
    return lease.thing(id).filter(Outlined.class::isInstance).map(Outlined.class::cast);
  }
}
