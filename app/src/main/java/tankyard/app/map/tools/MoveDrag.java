package tankyard.app.map.tools;

import java.util.List;
import tankyard.app.edit.Move;
import tankyard.app.map.plan.MapSpot;

/**
 * Drags the picked things; the one under the pointer lands on round numbers, the rest keep step.
 */
final class MoveDrag implements Drag {
  private final MapDesk desk;
  private final List<String> ids;
  private final MapSpot grabbed;
  private final MapSpot from;
  private final String gesture;

  MoveDrag(MapDesk desk, String grabbedId, MapSpot from, String gesture) {
    this.desk = desk;
    this.ids = desk.selection().ids();
    this.grabbed = desk.plan().hold(grabbedId).orElseThrow();
    this.from = from;
    this.gesture = gesture;
  }

  @Override
  public void to(Pointer pointer) {
    MapSpot at = desk.camera().spot(pointer.x(), pointer.y());
    MapSpot wanted = grabbed.plus(at.eastM() - from.eastM(), at.northM() - from.northM());
    MapSpot landed = desk.snapper().round(wanted);
    move(landed.eastM() - grabbed.eastM(), landed.northM() - grabbed.northM());
  }

  @Override
  public void putBack() {
    move(0, 0);
  }

  private void move(double eastM, double northM) {
    desk.edit(Move.of(ids, eastM, northM).in(gesture));
  }
}
