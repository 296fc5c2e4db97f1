package tankyard.app.map.layers;

import java.util.Comparator;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import tankyard.app.edit.ThingKind;
import tankyard.app.map.plan.PlanThing;
import tankyard.app.map.plan.SymbolSize;
import tankyard.app.style.Symbols;
import tankyard.engine.lease.Status;

/** The things: outlines to scale, or symbols where the outline would be too small. */
public final class ThingLayer implements Layer {
  static final double HALO_PX = 7;

  @Override
  public void paint(Painting p) {
    Symbols symbols = new Symbols(p.g(), p.inks());
    List<PlanThing> fromBelow =
        p.plan().things().stream()
            .filter(t -> p.sees(t.at()))
            .sorted(Comparator.comparingInt(ThingLayer::height))
            .toList();
    for (PlanThing thing : fromBelow) {
      SymbolSize size = SymbolSize.of(thing, p.camera());
      double x = p.camera().x(thing.at());
      double y = p.camera().y(thing.at());
      halo(p, thing, x, y, size);
      symbols.draw(thing.kind(), x, y, size.widthPx(), size.heightPx(), thing.status());
    }
  }

  /** Where symbols crowd, what goes away lies lowest and the separator on top. */
  private static int height(PlanThing thing) {
    if (thing.status() == Status.REMOVE) {
      return 0;
    }
    return thing.kind() == ThingKind.SEPARATOR ? 2 : 1;
  }

  private static void halo(Painting p, PlanThing thing, double x, double y, SymbolSize size) {
    boolean picked = p.picked().contains(thing.id());
    if (!picked && !p.hovered().equals(thing.id())) {
      return;
    }
    Color halo = picked ? p.inks().picked() : p.inks().quiet();
    GraphicsContext g = p.g();
    double width = size.widthPx() + 2 * HALO_PX;
    double height = size.heightPx() + 2 * HALO_PX;
    double round = Math.min(width, height);
    g.setFill(halo.deriveColor(0, 1, 1, picked ? 0.65 : 0.3));
    g.fillRoundRect(x - width / 2, y - height / 2, width, height, round, round);
    if (picked) {
      g.setStroke(p.inks().ink());
      g.setLineWidth(1);
      g.setLineDashes();
      g.strokeRoundRect(x - width / 2, y - height / 2, width, height, round, round);
    }
  }
}
