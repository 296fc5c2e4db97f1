package tankyard.app.map.tools;

import java.util.ArrayList;
import java.util.List;
import tankyard.app.map.plan.Ghost;
import tankyard.app.map.plan.MapSpot;

/** A tape: click along a way and read its length, bearing and rise. Changes nothing. */
public final class MeasureTool implements Tool {
  private final MapDesk desk;
  private final List<MapSpot> spots = new ArrayList<>();
  private boolean done;

  public MeasureTool(MapDesk desk) {
    this.desk = desk;
  }

  @Override
  public String hint() {
    return spots.isEmpty()
        ? "Click where to measure from"
        : "Click on along the way. Enter stops the tape, Escape puts it away";
  }

  @Override
  public void release(Pointer pointer) {
    if (done) {
      spots.clear();
      done = false;
    }
    spots.add(at(pointer));
    show(spots);
  }

  @Override
  public void move(Pointer pointer) {
    if (!spots.isEmpty() && !done) {
      List<MapSpot> all = new ArrayList<>(spots);
      all.add(at(pointer));
      show(all);
    }
  }

  @Override
  public void drag(Pointer pointer) {
    move(pointer);
  }

  private void show(List<MapSpot> all) {
    String bearing = Tape.bearing(all);
    String words = Tape.words(desk, all) + (bearing.isEmpty() ? "" : ", bearing " + bearing);
    desk.show(Ghost.tape(all, words));
  }

  @Override
  public void finish() {
    done = true;
    if (!spots.isEmpty()) {
      show(spots);
    }
  }

  @Override
  public void back() {
    if (!spots.isEmpty()) {
      spots.remove(spots.size() - 1);
      desk.clearGhost();
    }
  }

  @Override
  public boolean giveUp() {
    boolean any = !spots.isEmpty();
    spots.clear();
    done = false;
    desk.clearGhost();
    return any;
  }

  private MapSpot at(Pointer pointer) {
    return desk.snapper().toThings(pointer.x(), pointer.y()).at();
  }
}
