package tankyard.app.map.layers;

import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.CloseUp;
import tankyard.app.map.plan.Ghost;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.Plan;
import tankyard.app.map.plan.Relief;
import tankyard.app.style.Inks;
import tankyard.engine.units.UnitSystem;

/**
 * What a layer is given: where to paint and what.
 *
 * @param picked ids
 * @param hovered id under the pointer; empty for none
 * @param closeUp where things stand too close to be told apart at this scale
 * @param stale whether the results belong to an earlier lease
 */
public record Painting(
    GraphicsContext g,
    Inks inks,
    Camera camera,
    Plan plan,
    Relief relief,
    List<String> picked,
    String hovered,
    Optional<Ghost> ghost,
    UnitSystem units,
    Shown shown,
    boolean stale,
    Optional<CloseUp> closeUp) {

  private static final double NEAR_PX = 80;

  /** Which sheets are laid on. */
  public record Shown(
      boolean ground, boolean grid, boolean names, boolean results, boolean heights, boolean key) {
    public static Shown all() {
      return new Shown(true, true, true, true, false, true);
    }
  }

  /** The same seen through another camera, for the close-up. */
  Painting through(Camera other) {
    return new Painting(
        g,
        inks,
        other,
        plan,
        relief,
        picked,
        hovered,
        ghost,
        units,
        shown,
        stale,
        Optional.empty());
  }

  /** Whether a spot is on the drawing or so near that its symbol reaches in. */
  boolean sees(MapSpot spot) {
    return camera.shows(spot, -NEAR_PX);
  }

  /** Whether it is picked or under the pointer. */
  boolean isLit(String id) {
    return picked.contains(id) || hovered.equals(id);
  }

  double width() {
    return camera.widthPx();
  }

  double height() {
    return camera.heightPx();
  }
}
