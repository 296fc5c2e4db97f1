package tankyard.app.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Outlined;
import tankyard.engine.lease.RoutePoint;

/**
 * Bends a line, or an outline on the ground, at a new corner.
 *
 * @param corner position the new corner takes, from 0
 */
public record AddCorner(String id, int corner, MapPoint at, Optional<String> gesture)
    implements Edit {

  @Override
  public String name(Lease before) {
    return "Add a corner to " + Naming.of(before, id);
  }

  @Override
  public Lease apply(Lease before) {
    Optional<Outlined> outline = Places.outlined(before, id);
    if (outline.isPresent()) {
      return before.with(outline.get().withCorner(corner, at));
    }
    Line line = Places.line(before, id);
    List<RoutePoint> route = new ArrayList<>(line.route());
    route.add(corner, RoutePoint.at(at));
    return Places.measureAnew(before.with(line.withRoute(route)), id);
  }
}
