package tankyard.app.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import tankyard.app.edit.Align;
import tankyard.app.edit.Connect;
import tankyard.app.edit.Delete;
import tankyard.app.edit.Duplicate;
import tankyard.app.edit.Hand.InHand;
import tankyard.app.edit.Selection;
import tankyard.app.edit.SetStatus;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.MapBox;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.PlanOutline;
import tankyard.app.map.plan.PlanThing;
import tankyard.app.map.tools.MapDesk;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Thing;

/** What can be done to what is picked, for menus and keys. */
public final class MapActions {
  private static final double ASIDE_PX = 24;

  private final MapViewModel map;
  private final MapDesk desk;
  private final Selection selection;
  private final ObjectProperty<Duplicate> copied = new SimpleObjectProperty<>(this, "copied");
  private int pasted;

  public MapActions(MapViewModel map) {
    this.map = map;
    this.desk = map.desk();
    this.selection = desk.selection();
  }

  public void selectAll() {
    List<String> ids = new ArrayList<>(desk.lease().things().map(Thing::id).toList());
    desk.lease().lines().stream().map(Line::id).forEach(ids::add);
    selection.select(ids);
  }

  /** Picks the next thing; false past the last, so that the keyboard can leave the map. */
  public boolean pickNext(boolean back) {
    List<String> order = new ArrayList<>(desk.plan().things().stream().map(PlanThing::id).toList());
    desk.lease().lines().stream().map(Line::id).forEach(order::add);
    desk.plan().outlines().stream().map(PlanOutline::id).forEach(order::add);
    if (order.isEmpty()) {
      return false;
    }
    List<String> ids = selection.ids();
    int at = ids.isEmpty() ? -1 : order.indexOf(ids.get(ids.size() - 1));
    int next = at < 0 ? (back ? order.size() - 1 : 0) : at + (back ? -1 : 1);
    if (next < 0 || next >= order.size()) {
      return false;
    }
    selection.reveal(order.get(next));
    return true;
  }

  public void delete() {
    if (!selection.isEmpty()) {
      desk.edit(Delete.of(selection.ids()));
    }
  }

  public void duplicate() {
    double aside = desk.camera().metres(ASIDE_PX);
    setDown(Duplicate.of(desk.lease(), selection.ids(), aside, -aside));
  }

  public void copy() {
    Duplicate taken = Duplicate.of(desk.lease(), selection.ids(), 0, 0);
    if (!taken.things().isEmpty()) {
      copied.set(taken);
      pasted = 0;
    }
  }

  /** What was copied; null for nothing. */
  public ObjectProperty<Duplicate> copiedProperty() {
    return copied;
  }

  public void paste() {
    Duplicate taken = copied.get();
    if (taken != null) {
      pasted++;
      double aside = desk.camera().metres(ASIDE_PX) * pasted;
      setDown(new Duplicate(taken.things(), taken.lines(), aside, -aside));
    }
  }

  private void setDown(Duplicate copy) {
    if (copy.things().isEmpty()) {
      return;
    }
    Lease before = desk.lease();
    if (desk.edit(copy)) {
      selection.select(copy.newIds(before));
    }
  }

  public void mark(Status status) {
    if (!selection.isEmpty()) {
      desk.edit(SetStatus.of(selection.ids(), status));
    }
  }

  public void align(Align.Along along) {
    List<String> things =
        selection.ids().stream().filter(id -> desk.lease().thing(id).isPresent()).toList();
    desk.edit(new Align(things, along));
  }

  /** Joins the two picked things at once; otherwise takes the pen in hand. */
  public void connect() {
    List<String> ids = selection.ids();
    boolean twoThings =
        ids.size() == 2 && ids.stream().allMatch(id -> desk.lease().thing(id).isPresent());
    if (!twoThings) {
      desk.hand().take(InHand.LINE);
      return;
    }
    Line line = desk.blanks().line(desk.lease(), ids.get(0), ids.get(1), List.of());
    if (desk.edit(new Connect(line))) {
      selection.select(line.id());
    }
  }

  public void zoomToPicked() {
    Optional<MapBox> box =
        selection.ids().stream()
            .map(desk.plan()::bounds)
            .flatMap(Optional::stream)
            .reduce(MapBox::with);
    box.ifPresent(b -> desk.cameraProperty().set(near(b)));
  }

  private Camera near(MapBox box) {
    double pad = 15; // A single thing has no width of its own: show a yard's worth around it.
    MapSpot southWest = new MapSpot(box.westM() - pad, box.southM() - pad);
    MapSpot northEast = new MapSpot(box.eastM() + pad, box.northM() + pad);
    return desk.camera().fitted(MapBox.between(southWest, northEast), 60);
  }

  public void zoomIn() {
    map.sight().zoom(1.25);
  }

  public void zoomOut() {
    map.sight().zoom(0.8);
  }

  public void fit() {
    map.sight().fit();
  }
}
