package tankyard.app.edit;

import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;

/**
 * Puts a corner of a line elsewhere. A height shot at the old place stays there as a spot height.
 *
 * @param corner its position in the route, from 0
 */
public record DragCorner(String lineId, int corner, MapPoint to, Optional<String> gesture)
    implements Edit {

  @Override
  public String name(Lease before) {
    return "Move a corner of " + Naming.of(before, lineId);
  }

  @Override
  public Lease apply(Lease before) {
    Lease moved = Places.moveCorner(before, Places.line(before, lineId), corner, to);
    return moved.equals(before) ? before : Places.measureAnew(moved, lineId);
  }
}
