package tankyard.app.map.tools;

import java.util.List;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.PlanThing;

/**
 * A pointer moved by keys, so that everything a tool does with the mouse can be done without one.
 */
public final class KeyPointer {
  private static final double STEP_PX = 8;

  private final MapDesk desk;
  private double x;
  private double y;
  private boolean known;

  public KeyPointer(MapDesk desk) {
    this.desk = desk;
  }

  /** Starts in the middle again, or at what is picked. */
  public void forget() {
    known = false;
  }

  public void by(Tool tool, double right, double down, boolean far) {
    find();
    double step = far ? 5 * STEP_PX : STEP_PX;
    Camera camera = desk.camera();
    x = Math.max(0, Math.min(camera.widthPx(), x + right * step));
    y = Math.max(0, Math.min(camera.heightPx(), y + down * step));
    tool.move(pointer(false));
  }

  /** Jumps to the next thing, or back to the one before. */
  public void toNextThing(Tool tool, boolean back) {
    find();
    List<PlanThing> things = desk.plan().things();
    if (things.isEmpty()) {
      return;
    }
    int at = -1;
    for (int i = 0; i < things.size(); i++) {
      PlanThing thing = things.get(i);
      double apart = Math.hypot(desk.camera().x(thing.at()) - x, desk.camera().y(thing.at()) - y);
      if (apart < 1) {
        at = i;
      }
    }
    int next = at < 0 ? 0 : Math.floorMod(at + (back ? -1 : 1), things.size());
    jump(things.get(next));
    tool.move(pointer(false));
  }

  private void jump(PlanThing thing) {
    if (!desk.camera().shows(thing.at(), 10)) {
      desk.cameraProperty().set(desk.camera().centredOn(thing.at()));
    }
    x = desk.camera().x(thing.at());
    y = desk.camera().y(thing.at());
  }

  /** Presses and lets go where the pointer is. */
  public void press(Tool tool, boolean shift) {
    find();
    tool.move(pointer(shift));
    tool.press(pointer(shift));
    tool.release(pointer(shift));
  }

  private void find() {
    if (!known) {
      known = true;
      x = desk.camera().widthPx() / 2;
      y = desk.camera().heightPx() / 2;
      desk.selection().single().flatMap(desk.plan()::thing).ifPresent(this::jump);
    }
  }

  private Pointer pointer(boolean shift) {
    return new Pointer(x, y, shift, false, 1);
  }
}
