package tankyard.app.map;

import javafx.geometry.Point2D;
import javafx.scene.Cursor;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.ZoomEvent;
import tankyard.app.edit.Hand.InHand;
import tankyard.app.map.plan.Hit;
import tankyard.app.map.tools.Pointer;
import tankyard.app.map.tools.Tool;

/**
 * Hands the mouse to the tool in hand; middle button and Space drag the map whatever is in hand.
 */
final class MapMouse {
  private static final double ZOOM_PER_PX = 1.0025;

  private final MapView view;
  private final MapViewModel map;
  private boolean panning;

  MapMouse(MapView view, MapViewModel map) {
    this.view = view;
    this.map = map;
  }

  void listen() {
    view.setOnMousePressed(this::pressed);
    view.setOnMouseDragged(this::dragged);
    view.setOnMouseReleased(this::released);
    view.setOnMouseMoved(this::moved);
    view.setOnMouseExited(e -> map.pointAway());
    view.setOnMouseClicked(this::clicked);
    view.setOnScroll(this::scrolled);
    view.setOnZoom(this::zoomed);
  }

  private void pressed(MouseEvent e) {
    view.requestFocus();
    panning = e.getButton() == MouseButton.MIDDLE || e.isPrimaryButtonDown() && view.isSpaceHeld();
    if (panning) {
      view.setCursor(Cursor.CLOSED_HAND);
      map.pan().press(pointer(e));
    } else if (e.getButton() == MouseButton.PRIMARY
        && map.sight().isOnCloseUp(e.getX(), e.getY())) {
      map.sight().goToCloseUp();
    } else if (e.getButton() == MouseButton.PRIMARY) {
      map.tool().press(pointer(e));
      map.sayHint();
    }
    e.consume();
  }

  private void dragged(MouseEvent e) {
    map.pointAt(e.getX(), e.getY());
    if (panning) {
      map.pan().drag(pointer(e));
    } else if (e.isPrimaryButtonDown()) {
      map.tool().drag(pointer(e));
      map.sayHint();
    }
  }

  private void released(MouseEvent e) {
    if (panning) {
      panning = false;
      map.pan().release(pointer(e));
      setCursor(e.getX(), e.getY());
    } else if (e.getButton() == MouseButton.PRIMARY) {
      map.tool().release(pointer(e));
      map.sayHint();
    }
  }

  private void moved(MouseEvent e) {
    map.pointAt(e.getX(), e.getY());
    map.tool().move(pointer(e));
    setCursor(e.getX(), e.getY());
  }

  private void setCursor(double x, double y) {
    InHand inHand = map.desk().hand().inHand();
    Hit hit = map.hitAt(x, y);
    if (view.isSpaceHeld() || inHand == InHand.PAN) {
      view.setCursor(Cursor.OPEN_HAND);
    } else if (inHand != InHand.NOTHING) {
      view.setCursor(Cursor.CROSSHAIR);
    } else {
      boolean plain = hit.isNothing() && !map.sight().isOnCloseUp(x, y);
      view.setCursor(plain ? Cursor.DEFAULT : Cursor.HAND);
    }
  }

  /** The right button opens the menu when it is let go: a press may begin a drag. */
  private void clicked(MouseEvent e) {
    Tool tool = map.tool();
    if (e.getButton() != MouseButton.SECONDARY || !e.isStillSincePress()) {
      return;
    }
    if (!tool.giveUp()) {
      view.openMenu(e.getX(), e.getY(), new Point2D(e.getScreenX(), e.getScreenY()));
    }
  }

  private void scrolled(ScrollEvent e) {
    if (e.getDeltaY() != 0) {
      map.sight().zoomAt(e.getX(), e.getY(), Math.pow(ZOOM_PER_PX, e.getDeltaY()));
    }
    e.consume();
  }

  private void zoomed(ZoomEvent e) {
    map.sight().zoomAt(e.getX(), e.getY(), e.getZoomFactor());
    e.consume();
  }

  private static Pointer pointer(MouseEvent e) {
    return new Pointer(e.getX(), e.getY(), e.isShiftDown(), e.isShortcutDown(), e.getClickCount());
  }
}
