package tankyard.app.map.tools;

import tankyard.app.edit.Edit;
import tankyard.app.edit.Place;
import tankyard.app.edit.SplitLine;
import tankyard.app.edit.ThingKind;
import tankyard.app.map.plan.Ghost;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.Snap;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Thing;

/** Sets a thing down where the pointer is let go. A tee let go on a line cuts the line in two. */
public final class PlaceTool implements Tool {
  private final MapDesk desk;
  private final ThingKind kind;

  public PlaceTool(MapDesk desk, ThingKind kind) {
    this.desk = desk;
    this.kind = kind;
  }

  @Override
  public String hint() {
    String onLine = kind == ThingKind.TEE ? "; on a line it cuts the line in two" : "";
    return "Click where the "
        + kind.words()
        + " stands"
        + onLine
        + ". Shift keeps it in hand, Escape puts it away";
  }

  @Override
  public void move(Pointer pointer) {
    Snap snap = snap(pointer);
    desk.show(Ghost.thing(kind, snap.at(), snap.line().isPresent()));
  }

  @Override
  public void press(Pointer pointer) {
    move(pointer);
  }

  @Override
  public void drag(Pointer pointer) {
    move(pointer);
  }

  @Override
  public void release(Pointer pointer) {
    Snap snap = snap(pointer);
    Thing thing = desk.blanks().thing(desk.lease(), kind, snap.at().toMapPoint(desk.lengthUnit()));
    if (desk.edit(edit(thing, snap))) {
      desk.selection().select(thing.id());
    }
    if (!pointer.shift()) {
      desk.clearGhost();
      desk.hand().putAway();
    }
  }

  private static Edit edit(Thing thing, Snap snap) {
    if (snap.line().isPresent() && thing instanceof Tee tee) {
      Snap.OnLine on = snap.line().get();
      return new SplitLine(on.lineId(), on.leg(), tee);
    }
    return new Place(thing);
  }

  private Snap snap(Pointer pointer) {
    if (kind == ThingKind.TEE) {
      Snap snap = desk.snapper().toThingsAndLines(pointer.x(), pointer.y());
      if (snap.line().isPresent()) {
        return snap;
      }
    }
    MapSpot round = desk.snapper().round(desk.camera().spot(pointer.x(), pointer.y()));
    return new Snap(round, java.util.Optional.empty(), java.util.Optional.empty());
  }

  @Override
  public boolean giveUp() {
    desk.clearGhost();
    return false;
  }
}
