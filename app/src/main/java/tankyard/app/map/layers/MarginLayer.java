package tankyard.app.map.layers;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import tankyard.app.map.plan.PlanLine;
import tankyard.app.style.Inks;
import tankyard.engine.lease.Service;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Unit;

/** What stands in the margin of a map: scale bar, north arrow, and the key to the lines. */
public final class MarginLayer implements Layer {
  private static final double EDGE_PX = 16;
  private static final double BAR_PX = 140;
  private static final double KEY_ROW_PX = 18;

  @Override
  public void paint(Painting p) {
    scaleBar(p);
    north(p);
    if (p.shown().key()) {
      key(p);
    }
  }

  private static void scaleBar(Painting p) {
    GraphicsContext g = p.g();
    Unit unit = p.units().unit(Dimension.LENGTH);
    double length = RoundNumber.atMost(unit.fromSi(p.camera().metres(BAR_PX)));
    double px = p.camera().px(unit.toSi(length));
    double x = EDGE_PX;
    double y = p.height() - EDGE_PX;
    rule(g, p.inks().paper(), 5, x, y, px);
    rule(g, p.inks().ink(), 1.5, x, y, px);
    String words = Figures.exact(length) + " " + unit.symbol();
    Lettering.write(
        g,
        words,
        Lettering.NOTE,
        x + 4,
        y - 5 - Lettering.LINE_PX,
        p.inks().ink(),
        p.inks().paper());
  }

  private static void rule(
      GraphicsContext g, Color ink, double weight, double x, double y, double px) {
    g.setStroke(ink);
    g.setLineWidth(weight);
    g.setLineDashes();
    g.strokePolyline(new double[] {x, x, x + px, x + px}, new double[] {y - 6, y, y, y - 6}, 4);
    g.strokeLine(x + px / 2, y - 4, x + px / 2, y);
  }

  private static void north(Painting p) {
    GraphicsContext g = p.g();
    double x = EDGE_PX + 8;
    double y = p.height() - EDGE_PX - 66;
    g.setFill(p.inks().ink());
    g.fillPolygon(new double[] {x, x, x - 6}, new double[] {y - 12, y + 8, y + 13}, 3);
    g.setStroke(p.inks().ink());
    g.setLineWidth(1);
    g.setLineDashes();
    g.strokePolygon(
        new double[] {x, x + 6, x, x - 6}, new double[] {y - 12, y + 13, y + 8, y + 13}, 4);
    Lettering.write(
        g,
        "N",
        Lettering.NAME,
        x - Lettering.width("N", Lettering.NAME) / 2,
        y - 28,
        p.inks().ink(),
        p.inks().paper());
  }

  private static void key(Painting p) {
    List<Service> used =
        Stream.of(Service.values())
            .filter(s -> p.plan().lines().stream().map(PlanLine::service).anyMatch(s::equals))
            .toList();
    if (used.isEmpty()) {
      return;
    }
    double width =
        used.stream().mapToDouble(s -> Lettering.width(s.words(), Lettering.NOTE)).max().orElse(0);
    double boxWidth = width + 66;
    double boxHeight = used.size() * KEY_ROW_PX + 12;
    double x = p.width() - EDGE_PX - boxWidth;
    double y = p.height() - EDGE_PX - boxHeight;
    GraphicsContext g = p.g();
    g.setFill(p.inks().paper().deriveColor(0, 1, 1, 0.9));
    g.setStroke(p.inks().quiet().deriveColor(0, 1, 1, 0.4));
    g.setLineWidth(1);
    g.setLineDashes();
    g.fillRoundRect(x, y, boxWidth, boxHeight, 8, 8);
    g.strokeRoundRect(x, y, boxWidth, boxHeight, 8, 8);
    for (int i = 0; i < used.size(); i++) {
      row(p, used.get(i), x + 10, y + 6 + (i + 0.5) * KEY_ROW_PX);
    }
  }

  private static void row(Painting p, Service service, double x, double y) {
    GraphicsContext g = p.g();
    g.setStroke(p.inks().of(service));
    g.setLineWidth(Inks.weight(service));
    g.setLineDashes(Inks.dash(service));
    g.strokeLine(x, y, x + 38, y);
    Lettering.write(
        g,
        service.words(),
        Lettering.NOTE,
        x + 48,
        y - Lettering.LINE_PX / 2,
        p.inks().ink(),
        p.inks().paper());
  }
}
