package tankyard.app.map.layers;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.PlanLine;
import tankyard.app.style.Inks;
import tankyard.engine.lease.Status;

/** The lines by service, with the way they flow; a picked line shows its corners. */
public final class LineLayer implements Layer {
  private static final double HALO_PX = 9;
  private static final double ARROW_PX = 7;
  private static final double LEAST_LEG_FOR_ARROW_PX = 34;

  @Override
  public void paint(Painting p) {
    p.plan().lines().forEach(line -> halo(p, line));
    p.plan().lines().forEach(line -> line(p, line));
    p.plan().lines().stream()
        .filter(line -> p.picked().contains(line.id()))
        .forEach(line -> Handles.of(p, line));
  }

  private static void halo(Painting p, PlanLine line) {
    boolean picked = p.picked().contains(line.id());
    if (picked || p.hovered().equals(line.id())) {
      GraphicsContext g = p.g();
      Color halo = picked ? p.inks().picked() : p.inks().quiet();
      g.setStroke(halo.deriveColor(0, 1, 1, picked ? 0.65 : 0.3));
      g.setLineWidth(HALO_PX);
      g.setLineDashes();
      stroke(p, line);
    }
  }

  private static void line(Painting p, PlanLine line) {
    GraphicsContext g = p.g();
    boolean goes = line.status() == Status.REMOVE;
    double light = line.status() == Status.NEW ? 1 : 0.7;
    g.setStroke(goes ? p.inks().quiet() : p.inks().of(line.service()));
    g.setLineWidth(goes ? 1 : Inks.weight(line.service()) * light);
    g.setLineDashes(Inks.dash(line.service()));
    stroke(p, line);
    if (goes) {
      crosses(p, line);
    } else if (line.way() != 0) {
      arrow(p, line);
    }
  }

  private static void stroke(Painting p, PlanLine line) {
    GraphicsContext g = p.g();
    double[] xs = line.spots().stream().mapToDouble(p.camera()::x).toArray();
    double[] ys = line.spots().stream().mapToDouble(p.camera()::y).toArray();
    g.setLineCap(StrokeLineCap.BUTT);
    g.setLineJoin(StrokeLineJoin.ROUND);
    g.strokePolyline(xs, ys, xs.length);
  }

  private static void arrow(Painting p, PlanLine line) {
    int leg = line.longestLeg();
    MapSpot a = line.spots().get(leg);
    MapSpot b = line.spots().get(leg + 1);
    if (p.camera().px(a.metresTo(b)) < LEAST_LEG_FOR_ARROW_PX) {
      return;
    }
    MapSpot middle = a.towards(b, 0.5);
    double angle =
        Math.atan2(p.camera().y(b) - p.camera().y(a), p.camera().x(b) - p.camera().x(a))
            + (line.way() < 0 ? Math.PI : 0);
    GraphicsContext g = p.g();
    g.save();
    g.translate(p.camera().x(middle), p.camera().y(middle));
    g.rotate(Math.toDegrees(angle));
    g.setFill(p.inks().of(line.service()));
    double[] xs = {ARROW_PX, -ARROW_PX * 0.6, -ARROW_PX * 0.6};
    double[] ys = {0, ARROW_PX * 0.65, -ARROW_PX * 0.65};
    g.fillPolygon(xs, ys, 3);
    g.restore();
  }

  /** A line that goes away is crossed out along its whole length. */
  private static void crosses(Painting p, PlanLine line) {
    GraphicsContext g = p.g();
    double length = p.camera().px(line.metres());
    int count = (int) Math.max(1, Math.min(200, length / 26));
    g.setStroke(p.inks().most());
    g.setLineWidth(1.4);
    g.setLineDashes();
    for (int i = 0; i < count; i++) {
      MapSpot at = line.along((i + 0.5) / count);
      double x = p.camera().x(at);
      double y = p.camera().y(at);
      g.strokeLine(x - 3, y - 3, x + 3, y + 3);
      g.strokeLine(x - 3, y + 3, x + 3, y - 3);
    }
  }
}
