package tankyard.app.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import tankyard.app.edit.Align;
import tankyard.app.edit.Hand.InHand;
import tankyard.app.edit.Place;
import tankyard.app.edit.Rename;
import tankyard.app.edit.ThingKind;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.Hit;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.PlanThing;
import tankyard.app.map.tools.MapDesk;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Thing;

/** The menu of whatever is under the pointer: a thing, a line, a corner, several, or the ground. */
final class MapMenu {
  private final MapView view;
  private final MapDesk desk;
  private final MapViewModel map;
  private final MapActions actions;
  private final LineActions lines;
  private final InPlace inPlace;
  private ContextMenu open;

  MapMenu(MapView view, MapViewModel map, InPlace inPlace) {
    this.view = view;
    this.map = map;
    this.desk = map.desk();
    this.actions = map.actions();
    this.lines = new LineActions(desk);
    this.inPlace = inPlace;
  }

  void open(double x, double y, Point2D screen) {
    if (open != null) {
      open.hide();
    }
    Hit hit = map.hitAt(x, y);
    if (!hit.isNothing() && !desk.selection().has(hit.id())) {
      desk.selection().select(hit.id());
    }
    open = new ContextMenu();
    open.setId("map-menu");
    open.getItems().setAll(items(hit, x, y));
    open.show(view, screen.getX(), screen.getY());
  }

  private List<MenuItem> items(Hit hit, double x, double y) {
    if (desk.selection().ids().size() > 1 && !hit.isNothing()) {
      return ofSeveral();
    }
    return switch (hit.what()) {
      case THING -> ofThing();
      case LINE -> ofLine(hit, x, y);
      case OUTLINE -> ofOutline(hit, x, y);
      case CORNER -> ofCorner(hit);
      case NOTHING -> ofGround(x, y);
    };
  }

  private List<MenuItem> ofThing() {
    List<MenuItem> items = new ArrayList<>();
    items.add(item("menu-rename", "Rename\u2026", this::renamePicked));
    items.add(item("menu-draw-line", "Draw a line from here", this::drawFromPicked));
    items.add(new SeparatorMenuItem());
    items.add(statusMenu());
    addCopying(items);
    addEnd(items, "Zoom to it");
    return items;
  }

  private List<MenuItem> ofLine(Hit hit, double x, double y) {
    List<MenuItem> items = new ArrayList<>();
    items.add(item("menu-rename", "Rename\u2026", this::renamePicked));
    items.add(addCorner(hit, x, y));
    items.add(
        item("menu-put-tee", "Put a tee here", () -> lines.putTee(hit.id(), hit.index(), x, y)));
    items.add(item("menu-turn", "Turn around, start to end", () -> lines.turnAround(hit.id())));
    items.add(new SeparatorMenuItem());
    items.add(statusMenu());
    addEnd(items, "Zoom to it");
    return items;
  }

  private List<MenuItem> ofOutline(Hit hit, double x, double y) {
    List<MenuItem> items = new ArrayList<>();
    items.add(item("menu-rename", "Rename\u2026", this::renamePicked));
    if (desk.plan().outline(hit.id()).orElseThrow().legs() > 0) {
      items.add(addCorner(hit, x, y));
    }
    items.add(new SeparatorMenuItem());
    items.add(statusMenu());
    addCopying(items);
    addEnd(items, "Zoom to it");
    return items;
  }

  private MenuItem addCorner(Hit hit, double x, double y) {
    return item(
        "menu-add-corner", "Add a corner here", () -> lines.addCorner(hit.id(), hit.index(), x, y));
  }

  private void addCopying(List<MenuItem> items) {
    items.add(item("menu-duplicate", "Duplicate", actions::duplicate));
    items.add(item("menu-copy", "Copy", actions::copy));
  }

  private void addEnd(List<MenuItem> items, String zoom) {
    items.add(item("menu-zoom-to", zoom, actions::zoomToPicked));
    items.add(new SeparatorMenuItem());
    items.add(item("menu-delete", "Delete", actions::delete));
  }

  private List<MenuItem> ofCorner(Hit hit) {
    List<MenuItem> items = new ArrayList<>();
    boolean outline = desk.plan().outline(hit.id()).isPresent();
    if (outline) {
      items.add(
          item(
              "menu-add-corner-after",
              "Add a corner after this",
              () -> lines.addCornerAfter(hit.id(), hit.index())));
    }
    items.add(
        item(
            "menu-remove-corner",
            "Remove this corner",
            () -> lines.removeCorner(hit.id(), hit.index())));
    items.add(
        item("menu-delete", outline ? "Delete all of it" : "Delete the line", actions::delete));
    return items;
  }

  private List<MenuItem> ofSeveral() {
    List<MenuItem> items = new ArrayList<>();
    items.add(item("menu-connect", "Connect the two", actions::connect));
    items.get(0).setDisable(desk.selection().ids().size() != 2);
    items.add(item("menu-align-row", "Line up west to east", () -> actions.align(Align.Along.ROW)));
    items.add(
        item(
            "menu-align-column",
            "Line up south to north",
            () -> actions.align(Align.Along.COLUMN)));
    items.add(new SeparatorMenuItem());
    items.add(statusMenu());
    addCopying(items);
    addEnd(items, "Zoom to them");
    return items;
  }

  private List<MenuItem> ofGround(double x, double y) {
    Menu place = new Menu("Set down here");
    place.setId("menu-place");
    for (ThingKind kind : ThingKind.values()) {
      place
          .getItems()
          .add(item("menu-place-" + kind.letters(), kind.words(), () -> placeAt(kind, x, y)));
    }
    MenuItem paste = item("menu-paste", "Paste", actions::paste);
    paste.setDisable(actions.copiedProperty().get() == null);
    MenuItem height = item("menu-height", "Note the ground height here\u2026", () -> height(x, y));
    return List.of(
        place,
        paste,
        height,
        new SeparatorMenuItem(),
        item("menu-select-all", "Pick everything", actions::selectAll),
        item("menu-fit", "Show the whole lease", actions::fit));
  }

  private Menu statusMenu() {
    Menu menu = new Menu("Mark as");
    menu.setId("menu-status");
    for (Status status : Status.values()) {
      menu.getItems()
          .add(
              item(
                  "menu-status-" + status.name().toLowerCase(java.util.Locale.ROOT),
                  status.words(),
                  () -> actions.mark(status)));
    }
    return menu;
  }

  private void drawFromPicked() {
    desk.hand().take(InHand.LINE);
    map.keyPointer().press(map.tool(), false);
    map.sayHint();
    view.requestFocus();
  }

  private void placeAt(ThingKind kind, double x, double y) {
    MapSpot at = desk.snapper().round(desk.camera().spot(x, y));
    Thing thing = desk.blanks().thing(desk.lease(), kind, at.toMapPoint(desk.lengthUnit()));
    if (desk.edit(new Place(thing))) {
      desk.selection().select(thing.id());
    }
  }

  void renamePicked() {
    desk.selection().single().ifPresent(this::rename);
  }

  private void rename(String id) {
    Camera camera = desk.camera();
    MapSpot at =
        desk.plan()
            .thing(id)
            .map(PlanThing::at)
            .or(() -> desk.plan().line(id).map(l -> l.along(0.5)))
            .or(() -> desk.plan().outline(id).map(o -> o.fromNorth().get(0)))
            .orElse(camera.centre());
    String name =
        desk.lease()
            .thing(id)
            .map(Thing::name)
            .or(() -> desk.lease().line(id).map(l -> l.name()))
            .orElse("");
    inPlace.open(
        desk,
        camera.x(at) + 12,
        camera.y(at) - 14,
        name,
        "Name",
        typed -> refusedBy(() -> desk.edit(new Rename(id, typed))));
  }

  private void height(double x, double y) {
    GroundNote note = new GroundNote(desk, desk.camera().spot(x, y));
    inPlace.open(desk, x, y - 14, note.typed(), "Ground height", note::take);
  }

  private Optional<String> refusedBy(java.util.function.BooleanSupplier edit) {
    return edit.getAsBoolean() ? Optional.empty() : Optional.of(desk.refusalProperty().get());
  }

  private static MenuItem item(String id, String words, Runnable action) {
    MenuItem item = new MenuItem(words);
    item.setId(id);
    item.setMnemonicParsing(false);
    item.setOnAction(e -> action.run());
    return item;
  }
}
