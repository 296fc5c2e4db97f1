package tankyard.app.map.layers;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.CloseUp;

/** Draws the battery a second time, larger, in the corner of a map of the whole lease. */
public final class CloseUpLayer implements Layer {
  private static final List<Layer> INSIDE =
      List.of(new LineLayer(), new ThingLayer(), new LabelLayer());

  @Override
  public void paint(Painting p) {
    if (p.shown().names()) {
      p.closeUp().ifPresent(closeUp -> paint(p, closeUp));
    }
  }

  private static void paint(Painting p, CloseUp closeUp) {
    GraphicsContext g = p.g();
    CloseUp.Frame frame = closeUp.frame();
    leader(p, closeUp);
    g.setFill(p.inks().paper());
    g.fillRoundRect(frame.x(), frame.y(), frame.width(), frame.height(), 8, 8);
    g.save();
    g.beginPath();
    g.rect(frame.x(), frame.y(), frame.width(), frame.height());
    g.clip();
    g.translate(frame.x(), frame.y());
    Painting inside = p.through(closeUp.camera());
    for (Layer layer : INSIDE) {
      g.save();
      layer.paint(inside);
      g.restore();
    }
    g.restore();
    g.setStroke(p.inks().quiet());
    g.setLineWidth(1);
    g.setLineDashes();
    g.strokeRoundRect(frame.x(), frame.y(), frame.width(), frame.height(), 8, 8);
  }

  /** Ties the close-up to its place on the map. */
  private static void leader(Painting p, CloseUp closeUp) {
    GraphicsContext g = p.g();
    Camera camera = p.camera();
    double reach = 14;
    double west = camera.x(closeUp.box().westM()) - reach;
    double east = camera.x(closeUp.box().eastM()) + reach;
    double north = camera.y(closeUp.box().northM()) - reach;
    double south = camera.y(closeUp.box().southM()) + reach;
    CloseUp.Frame frame = closeUp.frame();
    g.setStroke(p.inks().quiet());
    g.setLineWidth(1);
    g.setLineDashes(3, 3);
    g.strokeRoundRect(west, north, east - west, south - north, 8, 8);
    g.strokeLine(frame.x() + frame.width(), frame.y() + frame.height(), west, north);
  }
}
