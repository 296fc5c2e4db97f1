package tankyard.app.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Outlined;
import tankyard.engine.lease.RoutePoint;

/** Takes a corner out of a line or an outline. A height shot there stays as a spot height. */
public record RemoveCorner(String id, int corner) implements Edit {

  @Override
  public String name(Lease before) {
    return "Remove a corner of " + Naming.of(before, id);
  }

  @Override
  public Lease apply(Lease before) {
    Optional<Outlined> outline = Places.outlined(before, id);
    if (outline.isPresent()) {
      return before.with(without(outline.get()));
    }
    Line line = Places.line(before, id);
    List<RoutePoint> route = new ArrayList<>(line.route());
    RoutePoint gone = route.remove(corner);
    Lease lease = Places.leaveHeight(before, gone.at(), gone.ground());
    return Places.measureAnew(lease.with(line.withRoute(route)), id);
  }

  private Outlined without(Outlined outline) {
    int fewest = outline.fewestCorners();
    if (outline.corners().size() <= fewest) {
      throw new EditRefusedException(
          outline.name()
              + " needs "
              + (fewest == 1 ? "one corner" : fewest + " corners")
              + ": add another first, or delete the whole of it.");
    }
    return outline.withoutCorner(corner);
  }
}
