package tankyard.app.map.layers;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import tankyard.app.edit.ThingKind;
import tankyard.app.map.plan.Ghost;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.SymbolSize;
import tankyard.app.style.Symbols;
import tankyard.engine.lease.Status;

/** What a tool is about to do, drawn paler than what is real. */
public final class GhostLayer implements Layer {
  private static final double LANDED_PX = 11;

  @Override
  public void paint(Painting p) {
    p.ghost().ifPresent(ghost -> ghost(p, ghost));
  }

  private static void ghost(Painting p, Ghost ghost) {
    switch (ghost.shape()) {
      case THING -> thing(p, ghost);
      case LINE -> way(p, ghost, 2);
      case TAPE -> way(p, ghost, 1.2);
      case BOX -> box(p, ghost.spots());
    }
    if (ghost.landed()) {
      MapSpot last = ghost.spots().get(ghost.spots().size() - 1);
      GraphicsContext g = p.g();
      g.setStroke(p.inks().accent());
      g.setLineWidth(2);
      g.setLineDashes();
      g.strokeOval(
          p.camera().x(last) - LANDED_PX,
          p.camera().y(last) - LANDED_PX,
          2 * LANDED_PX,
          2 * LANDED_PX);
    }
  }

  private static void thing(Painting p, Ghost ghost) {
    ThingKind kind = ghost.kind().orElseThrow();
    MapSpot at = ghost.spots().get(0);
    SymbolSize size = SymbolSize.of(kind, 0, 0, p.camera());
    GraphicsContext g = p.g();
    g.save();
    g.setGlobalAlpha(0.65);
    new Symbols(g, p.inks())
        .draw(
            kind, p.camera().x(at), p.camera().y(at), size.widthPx(), size.heightPx(), Status.NEW);
    g.restore();
  }

  private static void way(Painting p, Ghost ghost, double weight) {
    GraphicsContext g = p.g();
    double[] xs = ghost.spots().stream().mapToDouble(p.camera()::x).toArray();
    double[] ys = ghost.spots().stream().mapToDouble(p.camera()::y).toArray();
    g.setStroke(p.inks().accent());
    g.setLineWidth(weight);
    g.setLineDashes(6, 4);
    g.strokePolyline(xs, ys, xs.length);
    g.setLineDashes();
    g.setFill(p.inks().accent());
    for (int i = 0; i < xs.length; i++) {
      g.fillOval(xs[i] - 3, ys[i] - 3, 6, 6);
    }
    if (!ghost.words().isEmpty()) {
      double x = xs[xs.length - 1] + 12;
      double y = ys[ys.length - 1] + 8;
      Lettering.plate(g, ghost.words(), x, y, p.inks().accent(), p.inks().paper());
    }
  }

  private static void box(Painting p, List<MapSpot> corners) {
    GraphicsContext g = p.g();
    double x = Math.min(p.camera().x(corners.get(0)), p.camera().x(corners.get(1)));
    double y = Math.min(p.camera().y(corners.get(0)), p.camera().y(corners.get(1)));
    double width = Math.abs(p.camera().x(corners.get(0)) - p.camera().x(corners.get(1)));
    double height = Math.abs(p.camera().y(corners.get(0)) - p.camera().y(corners.get(1)));
    g.setFill(p.inks().accent().deriveColor(0, 1, 1, 0.1));
    g.fillRect(x, y, width, height);
    g.setStroke(p.inks().accent());
    g.setLineWidth(1);
    g.setLineDashes(4, 3);
    g.strokeRect(x, y, width, height);
  }
}
