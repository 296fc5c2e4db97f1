package tankyard.app.map;

import javafx.geometry.Point2D;
import tankyard.app.edit.Hand;
import tankyard.app.map.tools.Pointer;

/** Follows a thing that is dragged off the rack over the map. */
final class RackCarry {
  private final MapView view;
  private final MapViewModel map;

  RackCarry(MapView view, MapViewModel map) {
    this.view = view;
    this.map = map;
  }

  void to(Hand.Carry carry) {
    Point2D at = view.sceneToLocal(carry.windowX(), carry.windowY());
    boolean over = at != null && view.contains(at);
    switch (carry.stage()) {
      case MOVING -> {
        if (over) {
          map.tool().move(Pointer.at(at.getX(), at.getY()));
          map.pointAt(at.getX(), at.getY());
        } else {
          map.tool().giveUp();
        }
      }
      case DROPPED -> {
        if (over) {
          map.tool().release(Pointer.at(at.getX(), at.getY()));
          view.requestFocus();
        } else {
          map.desk().hand().putAway();
        }
      }
      case GIVEN_UP -> map.tool().giveUp();
    }
  }
}
