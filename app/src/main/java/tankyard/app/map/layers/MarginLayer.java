package tankyard.app.map.layers;

import java.util.ArrayList;
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
  private static final double KEY_INSET_PX = 10;
  private static final double KEY_SIGN_PX = 62; // A stroke of 38, and room on both its sides.

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
    plate(p, x - 6, y - 10 - Lettering.LINE_PX, px + 12, Lettering.LINE_PX + 16);
    rule(g, p.inks().ink(), 1.5, x, y, px);
    String words =
        (length >= 1000 ? Figures.grouped(length) : Figures.exact(length)) + " " + unit.symbol();
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
    List<List<Service>> rows = rows(used, p.width() - 3 * EDGE_PX - BAR_PX);
    double width = rows.stream().mapToDouble(MarginLayer::width).max().orElse(0);
    double left = p.width() - EDGE_PX - width;
    double top = p.height() - EDGE_PX / 2 - rows.size() * KEY_ROW_PX;
    plate(p, left - KEY_INSET_PX, top, width + KEY_INSET_PX, rows.size() * KEY_ROW_PX);
    double y = top + KEY_ROW_PX / 2;
    for (List<Service> row : rows) {
      double x = left;
      for (Service service : row) {
        row(p, service, x, y);
        x += width(service);
      }
      y += KEY_ROW_PX;
    }
  }

  /** Beside the scale bar, in the margin that a fitted map leaves, so that no ground is hidden. */
  private static List<List<Service>> rows(List<Service> used, double room) {
    List<List<Service>> rows = new ArrayList<>(List.of(new ArrayList<>()));
    for (Service service : used) {
      List<Service> last = rows.get(rows.size() - 1);
      if (!last.isEmpty() && width(last) + width(service) > room) {
        last = new ArrayList<>();
        rows.add(last);
      }
      last.add(service);
    }
    return rows;
  }

  private static double width(List<Service> row) {
    return row.stream().mapToDouble(MarginLayer::width).sum();
  }

  private static double width(Service service) {
    return Lettering.width(service.words(), Lettering.NOTE) + KEY_SIGN_PX;
  }

  private static void plate(Painting p, double x, double y, double width, double height) {
    GraphicsContext g = p.g();
    g.setFill(p.inks().paper().deriveColor(0, 1, 1, 0.9));
    g.setStroke(p.inks().quiet().deriveColor(0, 1, 1, 0.4));
    g.setLineWidth(1);
    g.setLineDashes();
    g.fillRoundRect(x, y, width, height, 8, 8);
    g.strokeRoundRect(x, y, width, height, 8, 8);
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
