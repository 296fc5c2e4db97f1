package tankyard.app.map;

import javafx.geometry.Point2D;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import tankyard.app.edit.Hand.InHand;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.PlanOutline;
import tankyard.app.map.tools.MapDesk;

/**
 * The keyboard over the map. With nothing in hand the arrows move what is picked, or the map where
 * nothing is; with something in hand they move the pointer and Enter presses there.
 */
final class MapKeys {
  private static final double PAN_PX = 60;
  private static final double FAR = 10;

  private final MapView view;
  private final MapViewModel map;
  private final MapActions actions;

  MapKeys(MapView view, MapViewModel map, MapActions actions) {
    this.view = view;
    this.map = map;
    this.actions = actions;
  }

  void listen() {
    view.addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    view.addEventHandler(
        KeyEvent.KEY_RELEASED,
        e -> {
          if (e.getCode() == KeyCode.SPACE) {
            view.setSpaceHeld(false);
          }
        });
  }

  private void pressed(KeyEvent e) {
    boolean typedInAField = e.getTarget() != view;
    boolean belongsToAMenu = e.isShortcutDown() || e.isAltDown();
    if (typedInAField || belongsToAMenu) {
      return;
    }
    if (handle(e)) {
      map.sayHint();
      e.consume();
    }
  }

  private boolean handle(KeyEvent e) {
    switch (e.getCode()) {
      case LEFT, KP_LEFT -> arrow(-1, 0, e.isShiftDown());
      case RIGHT, KP_RIGHT -> arrow(1, 0, e.isShiftDown());
      case UP, KP_UP -> arrow(0, -1, e.isShiftDown());
      case DOWN, KP_DOWN -> arrow(0, 1, e.isShiftDown());
      case TAB -> {
        return tab(e.isShiftDown());
      }
      case ENTER -> enter(e.isShiftDown());
      case ESCAPE -> escape();
      case BACK_SPACE -> backspace();
      case DELETE -> actions.delete();
      case F2 -> view.renamePicked();
      case PLUS, ADD, EQUALS -> actions.zoomIn();
      case MINUS, SUBTRACT -> actions.zoomOut();
      case DIGIT0, NUMPAD0 -> actions.fit();
      case SPACE -> view.setSpaceHeld(true);
      case CONTEXT_MENU -> menu();
      case F10 -> {
        if (!e.isShiftDown()) {
          return false;
        }
        menu();
      }
      default -> {
        return false;
      }
    }
    return true;
  }

  private boolean handIsEmpty() {
    return map.desk().hand().inHand() == InHand.NOTHING;
  }

  private void arrow(double right, double down, boolean far) {
    if (!handIsEmpty() && map.desk().hand().inHand() != InHand.PAN) {
      map.keyPointer().by(map.tool(), right, down, far);
      return;
    }
    double steps = far ? FAR : 1;
    boolean moved = handIsEmpty() && map.nudge().by(right * steps, -down * steps);
    if (!moved) {
      MapDesk desk = map.desk();
      desk.cameraProperty().set(desk.camera().panned(-right * PAN_PX, -down * PAN_PX));
    }
  }

  private boolean tab(boolean back) {
    if (handIsEmpty()) {
      return actions.pickNext(back);
    }
    map.keyPointer().toNextThing(map.tool(), back);
    return true;
  }

  private void enter(boolean shift) {
    if (map.desk().hand().inHand() == InHand.MEASURE && shift) {
      map.tool().finish();
    } else if (!handIsEmpty()) {
      map.keyPointer().press(map.tool(), shift);
    }
  }

  private void escape() {
    if (map.tool().giveUp()) {
      return;
    }
    if (!handIsEmpty()) {
      map.desk().hand().putAway();
    } else {
      map.desk().selection().clear();
    }
  }

  private void backspace() {
    if (handIsEmpty()) {
      actions.delete();
    } else {
      map.tool().back();
    }
  }

  /** The menu of what is picked, or of the middle of the map. */
  private void menu() {
    MapDesk desk = map.desk();
    Camera camera = desk.camera();
    double x = camera.widthPx() / 2;
    double y = camera.heightPx() / 2;
    var box = desk.selection().single().flatMap(desk.plan()::bounds);
    if (box.isPresent()) {
      var one = desk.selection().single();
      var at =
          one.flatMap(desk.plan()::line)
              .map(l -> l.along(0.5))
              .or(() -> one.flatMap(desk.plan()::outline).map(PlanOutline::onASide))
              .or(() -> one.flatMap(desk.plan()::hold))
              .orElse(box.get().centre());
      x = camera.x(at);
      y = camera.y(at);
    }
    Point2D screen = view.localToScreen(x, y);
    view.openMenu(x, y, screen);
  }
}
