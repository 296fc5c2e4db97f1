package tankyard.app.map.tools;

import java.util.Optional;
import tankyard.app.edit.DragCorner;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.Snapper;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Outlined;

/**
 * Drags a corner of a line or an outline; with Shift it stays straight with the corner before it.
 */
final class CornerDrag implements Drag {
  private final MapDesk desk;
  private final String id;
  private final int corner;
  private final String gesture;
  private final MapPoint start;

  CornerDrag(MapDesk desk, String id, int corner, String gesture) {
    this.desk = desk;
    this.id = id;
    this.corner = corner;
    this.gesture = gesture;
    this.start = start(desk.lease());
  }

  private MapPoint start(Lease lease) {
    return lease
        .line(id)
        .map(line -> line.route().get(corner).at())
        .orElseGet(() -> ((Outlined) lease.thing(id).orElseThrow()).corners().get(corner));
  }

  @Override
  public void to(Pointer pointer) {
    MapSpot at = desk.camera().spot(pointer.x(), pointer.y());
    if (pointer.shift()) {
      at = Snapper.straightened(desk.plan().cornered(id).orElseThrow().before(corner), at);
    } else {
      at = desk.snapper().round(at);
    }
    edit(at.toMapPoint(desk.lengthUnit()));
  }

  @Override
  public void putBack() {
    edit(start);
  }

  private void edit(MapPoint to) {
    desk.edit(new DragCorner(id, corner, to, Optional.of(gesture)));
  }
}
