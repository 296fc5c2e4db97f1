package tankyard.app.edit;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.RoutePoint;

/** Takes a corner out of a line. A height shot there stays as a spot height. */
public record RemoveCorner(String lineId, int corner) implements Edit {

  @Override
  public String name(Lease before) {
    return "Remove a corner of " + Naming.of(before, lineId);
  }

  @Override
  public Lease apply(Lease before) {
    Line line = Places.line(before, lineId);
    List<RoutePoint> route = new ArrayList<>(line.route());
    RoutePoint gone = route.remove(corner);
    Lease lease = Places.leaveHeight(before, gone.at(), gone.ground());
    return Places.measureAnew(lease.with(line.withRoute(route)), lineId);
  }
}
