package tankyard.app.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.RoutePoint;

/**
 * Bends a line at a new corner.
 *
 * @param corner position the new corner takes in the route, from 0
 */
public record AddCorner(String lineId, int corner, MapPoint at, Optional<String> gesture)
    implements Edit {

  @Override
  public String name(Lease before) {
    return "Add a corner to " + Naming.of(before, lineId);
  }

  @Override
  public Lease apply(Lease before) {
    Line line = Places.line(before, lineId);
    List<RoutePoint> route = new ArrayList<>(line.route());
    route.add(corner, RoutePoint.at(at));
    return Places.measureAnew(before.with(line.withRoute(route)), lineId);
  }
}
