package tankyard.app.map.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.app.map.plan.Ghost;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.Snap;
import tankyard.app.map.plan.Snapper;

/**
 * Draws a line: from a thing, over corners, to another thing; by clicks or by one drag. An end let
 * go on another line makes a tee there.
 */
public final class LineTool implements Tool {
  private final MapDesk desk;
  private Optional<LineEnd> start = Optional.empty();
  private final List<MapSpot> corners = new ArrayList<>();
  private Pointer pressed;
  private boolean startedHere;

  public LineTool(MapDesk desk) {
    this.desk = desk;
  }

  @Override
  public String hint() {
    return start.isEmpty()
        ? "Click the thing the line starts at"
        : "Click corners, then the thing it ends at. Backspace takes back a corner, Shift keeps it"
            + " straight, Escape gives it up";
  }

  @Override
  public void move(Pointer pointer) {
    Snap snap = snap(pointer);
    List<MapSpot> spots = new ArrayList<>();
    start.ifPresent(s -> spots.add(s.at()));
    spots.addAll(corners);
    spots.add(snap.at());
    desk.show(Ghost.line(spots, words(spots), !snap.isFree()));
  }

  private String words(List<MapSpot> spots) {
    return start.isEmpty() ? "" : Tape.words(desk, spots);
  }

  @Override
  public void press(Pointer pointer) {
    pressed = pointer;
    startedHere = false;
    if (start.isEmpty()) {
      Snap snap = snap(pointer);
      if (snap.isFree()) {
        desk.refuse("A line starts at a thing: a well, a tee, a separator, a tank, a pump.");
      } else {
        start = Optional.of(LineEnd.of(snap));
        startedHere = true;
      }
    }
    move(pointer);
  }

  @Override
  public void drag(Pointer pointer) {
    move(pointer);
  }

  @Override
  public void release(Pointer pointer) {
    boolean dragged = pressed != null && pointer.draggedFrom(pressed);
    pressed = null;
    if (start.isEmpty() || startedHere && !dragged) {
      return; // The click that started it.
    }
    Snap snap = snap(pointer);
    if (!snap.isFree()) {
      endAt(LineEnd.of(snap), pointer.shift());
    } else if (!startedHere) {
      corners.add(snap.at());
    }
    startedHere = false;
    if (start.isPresent()) {
      move(pointer);
    }
  }

  private void endAt(LineEnd end, boolean keepInHand) {
    LineEnd from = start.orElseThrow();
    if (from.isSame(end)) {
      desk.refuse("A line can't end where it starts: end it at another thing.");
      return;
    }
    if (new LineEdit(desk, from, corners, end).run()) {
      clear();
      if (!keepInHand) {
        desk.hand().putAway();
      }
    }
  }

  @Override
  public void back() {
    if (!corners.isEmpty()) {
      corners.remove(corners.size() - 1);
    } else {
      clear();
    }
  }

  @Override
  public boolean giveUp() {
    boolean any = start.isPresent();
    clear();
    return any;
  }

  private void clear() {
    start = Optional.empty();
    corners.clear();
    startedHere = false;
    desk.clearGhost();
  }

  private Snap snap(Pointer pointer) {
    Snap snap = desk.snapper().toThingsAndLines(pointer.x(), pointer.y());
    if (snap.isFree() && pointer.shift() && start.isPresent()) {
      MapSpot last = corners.isEmpty() ? start.get().at() : corners.get(corners.size() - 1);
      MapSpot raw = desk.camera().spot(pointer.x(), pointer.y());
      return new Snap(Snapper.straightened(last, raw), Optional.empty(), Optional.empty());
    }
    return snap;
  }
}
