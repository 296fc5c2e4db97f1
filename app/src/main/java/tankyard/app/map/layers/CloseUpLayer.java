package tankyard.app.map.layers;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.CloseUp;

/** Draws the battery a second time, larger, in the corner of a map of the whole lease. */
public final class CloseUpLayer implements Layer {
  private static final List<Layer> INSIDE =
      List.of(
          new OutlineLayer(), new LineLayer(), new WireLayer(), new ThingLayer(), new LabelLayer());
  private static final double REACH_PX = 14;

  @Override
  public void paint(Painting p) {
    if (p.shown().names()) {
      p.closeUp().ifPresent(closeUp -> paint(p, closeUp));
    }
  }

  private static void paint(Painting p, CloseUp closeUp) {
    GraphicsContext g = p.g();
    CloseUp.Frame frame = closeUp.frame();
    tie(p, closeUp);
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

  /** The stroke from the frame to the place it shows, as x and y of either end. */
  static double[] leader(Painting p, CloseUp closeUp) {
    CloseUp.Frame frame = closeUp.frame();
    double west = p.camera().x(closeUp.box().westM()) - REACH_PX;
    double north = p.camera().y(closeUp.box().northM()) - REACH_PX;
    return new double[] {frame.x() + frame.width(), frame.y() + frame.height(), west, north};
  }

  /** Ties the close-up to its place on the map. */
  private static void tie(Painting p, CloseUp closeUp) {
    GraphicsContext g = p.g();
    Camera camera = p.camera();
    double west = camera.x(closeUp.box().westM()) - REACH_PX;
    double east = camera.x(closeUp.box().eastM()) + REACH_PX;
    double north = camera.y(closeUp.box().northM()) - REACH_PX;
    double south = camera.y(closeUp.box().southM()) + REACH_PX;
    double[] leader = leader(p, closeUp);
    g.setStroke(p.inks().quiet());
    g.setLineWidth(1);
    g.setLineDashes(3, 3);
    g.strokeRoundRect(west, north, east - west, south - north, 8, 8);
    g.strokeLine(leader[0], leader[1], leader[2], leader[3]);
  }
}
