package tankyard.app.map;

import java.util.Optional;
import tankyard.app.edit.Hand.InHand;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.CloseUp;
import tankyard.app.map.plan.MapBox;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.tools.MapDesk;

/** Which part of the map is in view: fitting, zooming, and bringing something before the eye. */
public final class Sight {
  private static final double MARGIN_PX = 90;
  private static final double CLOSE_UP_SPARES_PX = 40;

  private final MapDesk desk;
  private Camera lastFit;

  Sight(MapDesk desk) {
    this.desk = desk;
  }

  /**
   * The drawing area has another size; a map that nobody has moved since it was fitted stays so.
   */
  public void resized(double width, double height) {
    boolean stillFitted = lastFit == null || desk.camera().equals(lastFit);
    look(desk.camera().resized(width, height));
    if (stillFitted && width > 0 && height > 0) {
      fit();
    }
  }

  /** Brings the whole lease into view. */
  public void fit() {
    desk.plan().bounds().ifPresent(b -> look(fitted(b)));
    lastFit = desk.camera();
  }

  /** Beside the close-up, where there is one and it would be in the way. */
  private Camera fitted(MapBox bounds) {
    Camera camera = desk.camera();
    double margin = Math.min(MARGIN_PX, Math.min(camera.widthPx(), camera.heightPx()) / 5);
    Camera plain = camera.fitted(bounds, margin);
    Optional<CloseUp> closeUp = CloseUp.of(desk.plan(), plain);
    boolean hides = closeUp.map(c -> c.hides(desk.plan(), plain)).orElse(false);
    return hides
        ? camera.fitted(bounds, margin, closeUp.get().frame().width() - CLOSE_UP_SPARES_PX)
        : plain;
  }

  /** Zooms in the middle. */
  public void zoom(double factor) {
    Camera camera = desk.camera();
    zoomAt(camera.widthPx() / 2, camera.heightPx() / 2, factor);
  }

  public void zoomAt(double x, double y, double factor) {
    look(desk.camera().zoomedAt(x, y, factor));
  }

  /** Brings a box into view; leaves the map where it is if it is in view already. */
  void show(MapBox box) {
    Camera camera = desk.camera();
    MapSpot southWest = new MapSpot(box.westM(), box.southM());
    MapSpot northEast = new MapSpot(box.eastM(), box.northM());
    if (!camera.shows(southWest, MARGIN_PX / 2) || !camera.shows(northEast, MARGIN_PX / 2)) {
      Camera fitted = camera.fitted(box, 2 * MARGIN_PX);
      boolean tooNear = fitted.pxPerM() > camera.pxPerM();
      look(tooNear ? camera.centredOn(box.centre()) : fitted);
    }
  }

  /** Whether a point lies on the close-up in the corner. */
  boolean isOnCloseUp(double x, double y) {
    boolean handIsEmpty = desk.hand().inHand() == InHand.NOTHING;
    return handIsEmpty && closeUp().map(c -> c.frame().contains(x, y)).orElse(false);
  }

  /** Brings what the close-up shows into view, large enough to work on. */
  void goToCloseUp() {
    closeUp().ifPresent(c -> look(desk.camera().fitted(c.box(), MARGIN_PX)));
  }

  private Optional<CloseUp> closeUp() {
    return CloseUp.of(desk.plan(), desk.camera());
  }

  private void look(Camera camera) {
    desk.cameraProperty().set(camera);
  }
}
