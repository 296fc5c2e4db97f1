package tankyard.app.edit;

import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Outlined;

/**
 * Puts a corner of a line or an outline elsewhere. A height shot at the old place stays there as a
 * spot height.
 *
 * @param corner its position, from 0
 */
public record DragCorner(String id, int corner, MapPoint to, Optional<String> gesture)
    implements Edit {

  @Override
  public String name(Lease before) {
    return "Move a corner of " + Naming.of(before, id);
  }

  @Override
  public Lease apply(Lease before) {
    Optional<Outlined> outline = Places.outlined(before, id);
    if (outline.isPresent()) {
      return before.with(outline.get().withCornerAt(corner, to));
    }
    Lease moved = Places.moveCorner(before, Places.line(before, id), corner, to);
    return moved.equals(before) ? before : Places.measureAnew(moved, id);
  }
}
