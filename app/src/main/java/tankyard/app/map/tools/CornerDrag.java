package tankyard.app.map.tools;

import java.util.Optional;
import tankyard.app.edit.DragCorner;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.PlanLine;
import tankyard.app.map.plan.Snapper;
import tankyard.engine.lease.MapPoint;

/** Drags a corner of a line; with Shift it stays straight with the corner before it. */
final class CornerDrag implements Drag {
  private final MapDesk desk;
  private final String lineId;
  private final int corner;
  private final String gesture;
  private final MapPoint start;

  CornerDrag(MapDesk desk, String lineId, int corner, String gesture) {
    this.desk = desk;
    this.lineId = lineId;
    this.corner = corner;
    this.gesture = gesture;
    this.start = desk.lease().line(lineId).orElseThrow().route().get(corner).at();
  }

  @Override
  public void to(Pointer pointer) {
    MapSpot at = desk.camera().spot(pointer.x(), pointer.y());
    if (pointer.shift()) {
      PlanLine line = desk.plan().line(lineId).orElseThrow();
      at = Snapper.straightened(line.spots().get(corner), at);
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
    desk.edit(new DragCorner(lineId, corner, to, Optional.of(gesture)));
  }
}
