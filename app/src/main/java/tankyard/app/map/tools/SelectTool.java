package tankyard.app.map.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.app.edit.AddCorner;
import tankyard.app.edit.Gesture;
import tankyard.app.map.plan.Cornered;
import tankyard.app.map.plan.Ghost;
import tankyard.app.map.plan.Hit;
import tankyard.app.map.plan.MapBox;
import tankyard.app.map.plan.MapSpot;

/** Nothing in hand: a press picks, a drag moves what is picked or draws a box around more. */
public final class SelectTool implements Tool {
  private final MapDesk desk;
  private Pointer pressed;
  private Hit hit;
  private Optional<Drag> drag = Optional.empty();
  private boolean boxing;
  private boolean narrowOnRelease;

  public SelectTool(MapDesk desk) {
    this.desk = desk;
  }

  @Override
  public String hint() {
    return boxing
        ? "Let go to pick everything inside the box"
        : "Click to pick, drag to move, drag across empty ground to pick several";
  }

  @Override
  public void press(Pointer pointer) {
    pressed = pointer;
    drag = Optional.empty();
    boxing = false;
    narrowOnRelease = false;
    hit = desk.hits().at(pointer.x(), pointer.y(), desk.selection().ids());
    if (isWay(hit) && pointer.clicks() == 2) {
      bend(pointer);
    } else if (hit.what() == Hit.What.THING || isWay(hit)) {
      pick(pointer);
    }
  }

  private void pick(Pointer pointer) {
    if (pointer.shift() || pointer.control()) {
      desk.selection().toggle(hit.id());
    } else if (desk.selection().has(hit.id())) {
      narrowOnRelease = true; // A press on one of several may start a drag of them all.
    } else {
      desk.selection().select(hit.id());
    }
  }

  private static boolean isWay(Hit hit) {
    return hit.what() == Hit.What.LINE || hit.what() == Hit.What.OUTLINE;
  }

  /** A double click on a line or a side bends it there. */
  private void bend(Pointer pointer) {
    Cornered way = desk.plan().cornered(hit.id()).orElseThrow();
    if (way.legs() == 0) {
      return;
    }
    int corner = way.cornerOn(hit.index());
    MapSpot foot = desk.hits().foot(way, hit.index(), pointer.x(), pointer.y());
    MapSpot at = desk.snapper().round(foot);
    desk.selection().select(hit.id());
    desk.edit(new AddCorner(hit.id(), corner, at.toMapPoint(desk.lengthUnit()), Optional.empty()));
    hit = new Hit(Hit.What.CORNER, hit.id(), corner);
  }

  @Override
  public void drag(Pointer pointer) {
    if (pressed == null || drag.isEmpty() && !boxing && !pointer.draggedFrom(pressed)) {
      return;
    }
    if (drag.isEmpty() && !boxing) {
      start();
    }
    drag.ifPresent(d -> d.to(pointer));
    if (boxing) {
      desk.show(Ghost.box(spot(pressed), spot(pointer)));
    }
  }

  private void start() {
    switch (hit.what()) {
      case THING, OUTLINE ->
          drag = Optional.of(new MoveDrag(desk, hit.id(), spot(pressed), Gesture.start()));
      case CORNER ->
          drag = Optional.of(new CornerDrag(desk, hit.id(), hit.index(), Gesture.start()));
      case LINE, NOTHING -> boxing = true;
    }
    narrowOnRelease = false;
  }

  @Override
  public void release(Pointer pointer) {
    if (pressed == null) {
      return;
    }
    if (boxing) {
      pickInside(pointer);
    } else if (drag.isEmpty() && narrowOnRelease) {
      desk.selection().select(hit.id());
    } else if (drag.isEmpty() && hit.isNothing() && !pointer.shift() && !pointer.control()) {
      desk.selection().clear();
    }
    end();
  }

  private void pickInside(Pointer pointer) {
    List<String> ids = new ArrayList<>();
    if (pointer.shift() || pointer.control()) {
      ids.addAll(desk.selection().ids());
    }
    ids.addAll(desk.hits().inside(MapBox.between(spot(pressed), spot(pointer))));
    desk.selection().select(ids);
  }

  @Override
  public boolean giveUp() {
    boolean any = boxing || drag.isPresent();
    drag.ifPresent(Drag::putBack);
    end();
    return any;
  }

  private void end() {
    pressed = null;
    drag = Optional.empty();
    boxing = false;
    desk.clearGhost();
  }

  private MapSpot spot(Pointer pointer) {
    return desk.camera().spot(pointer.x(), pointer.y());
  }
}
