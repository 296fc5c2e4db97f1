package tankyard.app.map.layers;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import tankyard.app.edit.ThingKind;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.PlanOutline;
import tankyard.app.map.plan.SymbolSize;
import tankyard.app.style.Symbols;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;

/** Berms, and landmarks with how far to keep from them. */
public final class OutlineLayer implements Layer {
  private static final double HALO_PX = 9;

  @Override
  public void paint(Painting p) {
    p.plan().outlines().forEach(outline -> setback(p, outline));
    p.plan().outlines().forEach(outline -> outline(p, outline));
    p.plan().outlines().stream()
        .filter(outline -> p.picked().contains(outline.id()))
        .forEach(outline -> Handles.of(p, outline));
  }

  private static void setback(Painting p, PlanOutline outline) {
    GraphicsContext g = p.g();
    g.setStroke(p.inks().most());
    g.setLineWidth(1);
    g.setLineDashes(1.5, 4);
    outline.setback().forEach(ring -> stroke(p, ring, false));
    g.setLineDashes();
  }

  private static void outline(Painting p, PlanOutline outline) {
    GraphicsContext g = p.g();
    halo(p, outline);
    boolean goes = outline.status() == Status.REMOVE;
    Color colour =
        goes
            ? p.inks().quiet()
            : outline.water() ? p.inks().of(Service.WATER_LEG) : ink(p, outline);
    if (outline.spots().size() == 1) {
      SymbolSize size = SymbolSize.of(outline.kind(), 0, 0, p.camera());
      MapSpot at = outline.corner(0);
      new Symbols(g, p.inks())
          .draw(
              outline.kind(),
              p.camera().x(at),
              p.camera().y(at),
              size.widthPx(),
              size.heightPx(),
              outline.status());
      return;
    }
    if (outline.closes() && outline.kind() == ThingKind.LANDMARK) {
      g.setFill(colour.deriveColor(0, 1, 1, 0.12));
      fill(p, outline);
    }
    g.setStroke(colour);
    g.setLineWidth(outline.status() == Status.NEW ? 2 : 1.2);
    g.setLineDashes(outline.kind() == ThingKind.BERM ? new double[] {7, 4} : new double[] {});
    if (goes) {
      g.setLineDashes(2, 3);
    }
    stroke(p, outline.spots(), outline.closes());
    g.setLineDashes();
  }

  private static Color ink(Painting p, PlanOutline outline) {
    return outline.kind() == ThingKind.BERM ? p.inks().ink() : p.inks().quiet();
  }

  private static void halo(Painting p, PlanOutline outline) {
    boolean picked = p.picked().contains(outline.id());
    if (!picked && !p.hovered().equals(outline.id())) {
      return;
    }
    Color halo = picked ? p.inks().picked() : p.inks().quiet();
    GraphicsContext g = p.g();
    g.setStroke(halo.deriveColor(0, 1, 1, picked ? 0.65 : 0.3));
    g.setLineDashes();
    g.setLineWidth(HALO_PX);
    if (outline.spots().size() > 1) {
      stroke(p, outline.spots(), outline.closes());
    } else {
      double x = p.camera().x(outline.corner(0));
      double y = p.camera().y(outline.corner(0));
      g.strokeOval(x - HALO_PX, y - HALO_PX, 2 * HALO_PX, 2 * HALO_PX);
    }
  }

  private static void stroke(Painting p, List<MapSpot> spots, boolean closes) {
    double[] xs = spots.stream().mapToDouble(p.camera()::x).toArray();
    double[] ys = spots.stream().mapToDouble(p.camera()::y).toArray();
    if (closes) {
      p.g().strokePolygon(xs, ys, xs.length);
    } else {
      p.g().strokePolyline(xs, ys, xs.length);
    }
  }

  private static void fill(Painting p, PlanOutline outline) {
    double[] xs = outline.spots().stream().mapToDouble(p.camera()::x).toArray();
    double[] ys = outline.spots().stream().mapToDouble(p.camera()::y).toArray();
    p.g().fillPolygon(xs, ys, xs.length);
  }
}
