package tankyard.app.map.layers;

import java.util.Comparator;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import tankyard.app.map.plan.Camera;
import tankyard.app.map.plan.ContourLine;
import tankyard.app.map.plan.LabelPlacer;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.PlanHeight;
import tankyard.app.map.plan.Relief;

/** The lie of the land: tints from low to high, contours, heights. */
public final class GroundLayer implements Layer {
  private static final double WORDS_APART_PX = 220;
  private static final double NAME_PX = 150;

  @Override
  public void paint(Painting p) {
    if (p.shown().ground()) {
      for (Relief.Terrace terrace : p.relief().terraces()) {
        terrace(p, terrace);
      }
      p.relief().contours().forEach(contour -> stroke(p, contour));
      LabelPlacer placer = new LabelPlacer(p.width(), p.height());
      // Names come on top later: most stand beside their thing.
      p.plan()
          .things()
          .forEach(t -> placer.keepFree(p.camera().x(t.at()), p.camera().y(t.at()), NAME_PX, 44));
      p.relief().contours().stream()
          .sorted(Comparator.comparing(contour -> !contour.heavy()))
          .forEach(contour -> words(p, placer, contour));
    }
    if (p.shown().heights()) {
      p.plan().heights().forEach(h -> height(p, h));
    }
  }

  private static void terrace(Painting p, Relief.Terrace terrace) {
    Color tint = p.inks().lowGround().interpolate(p.inks().highGround(), terrace.share());
    GraphicsContext g = p.g();
    g.setFill(tint);
    g.setStroke(tint);
    g.setLineWidth(1); // Covers the hairline between two neighbouring faces.
    g.setLineDashes();
    for (List<MapSpot> face : terrace.faces()) {
      double[] xs = face.stream().mapToDouble(p.camera()::x).toArray();
      double[] ys = face.stream().mapToDouble(p.camera()::y).toArray();
      g.fillPolygon(xs, ys, xs.length);
      g.strokePolygon(xs, ys, xs.length);
    }
  }

  private static void stroke(Painting p, ContourLine contour) {
    GraphicsContext g = p.g();
    double[] xs = contour.spots().stream().mapToDouble(p.camera()::x).toArray();
    double[] ys = contour.spots().stream().mapToDouble(p.camera()::y).toArray();
    g.setStroke(p.inks().contour());
    g.setLineWidth(contour.heavy() ? 1.4 : 0.8);
    g.setLineDashes();
    g.strokePolyline(xs, ys, xs.length);
  }

  private static void words(Painting p, LabelPlacer placer, ContourLine contour) {
    Camera camera = p.camera();
    double sinceLast = WORDS_APART_PX * 0.6;
    for (int i = 0; i + 1 < contour.spots().size(); i++) {
      MapSpot a = contour.spots().get(i);
      MapSpot b = contour.spots().get(i + 1);
      double leg = camera.px(a.metresTo(b));
      sinceLast += leg;
      double width = Lettering.width(contour.words(), Lettering.NOTE);
      MapSpot middle = a.towards(b, 0.5);
      boolean room =
          sinceLast > WORDS_APART_PX
              && leg > width * 1.6
              && placer.takes(camera.x(middle), camera.y(middle), width, width);
      if (room) {
        along(p, contour.words(), a, b, width);
        sinceLast = 0;
      }
    }
  }

  /** Writes along the contour, never upside down. */
  private static void along(Painting p, String words, MapSpot a, MapSpot b, double width) {
    GraphicsContext g = p.g();
    MapSpot middle = a.towards(b, 0.5);
    double angle =
        Math.toDegrees(
            Math.atan2(p.camera().y(b) - p.camera().y(a), p.camera().x(b) - p.camera().x(a)));
    double upright = angle > 90 ? angle - 180 : angle < -90 ? angle + 180 : angle;
    g.save();
    g.translate(p.camera().x(middle), p.camera().y(middle));
    g.rotate(upright);
    Lettering.write(
        g,
        words,
        Lettering.NOTE,
        -width / 2,
        -Lettering.LINE_PX / 2,
        p.inks().contourWords(),
        p.inks().lowGround());
    g.restore();
  }

  private static void height(Painting p, PlanHeight height) {
    double x = p.camera().x(height.at());
    double y = p.camera().y(height.at());
    GraphicsContext g = p.g();
    g.setStroke(p.inks().contourWords());
    g.setLineWidth(1);
    g.setLineDashes();
    g.strokeLine(x - 3, y, x + 3, y);
    g.strokeLine(x, y - 3, x, y + 3);
    Lettering.write(
        g, height.words(), Lettering.NOTE, x + 5, y - 7, p.inks().contourWords(), p.inks().paper());
  }
}
