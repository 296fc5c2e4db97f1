package tankyard.app.map.layers;

import javafx.scene.canvas.GraphicsContext;
import tankyard.app.map.plan.Cornered;

/** The corners of what is picked, to take hold of. */
final class Handles {
  private static final double HALF_PX = 4;

  private Handles() {}

  static void of(Painting p, Cornered way) {
    GraphicsContext g = p.g();
    g.setFill(p.inks().paper());
    g.setStroke(p.inks().ink());
    g.setLineWidth(1.4);
    g.setLineDashes();
    for (int i = 0; i < way.corners(); i++) {
      double x = p.camera().x(way.corner(i)) - HALF_PX;
      double y = p.camera().y(way.corner(i)) - HALF_PX;
      g.fillRect(x, y, 2 * HALF_PX, 2 * HALF_PX);
      g.strokeRect(x, y, 2 * HALF_PX, 2 * HALF_PX);
    }
  }
}
