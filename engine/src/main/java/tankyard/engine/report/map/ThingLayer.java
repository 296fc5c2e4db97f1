package tankyard.engine.report.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Thing;

/** Wells, tees, vessels, tanks and pumps. */
final class ThingLayer {
  private final List<Thing> things;
  private final Palette palette;

  ThingLayer(List<Thing> things, Palette palette) {
    this.things = things;
    this.palette = palette;
  }

  void paint(Graphics2D g, Frame frame, Labels labels) {
    for (Thing thing : things) {
      Symbol symbol = Symbol.of(thing, frame.at(thing.at()), frame.scale());
      if (symbol.outline().intersects(frame.page())) {
        paint(g, symbol, thing.status(), Symbol.isWell(thing), palette);
        labels.keepOff(symbol.outline().getBounds2D());
      }
    }
  }

  static void paint(Graphics2D g, Symbol symbol, Status status, boolean well, Palette palette) {
    Color edge = status == Status.REMOVE ? palette.faint() : palette.ink();
    g.setColor(fill(symbol, status, palette));
    g.fill(symbol.outline());
    g.setColor(edge);
    g.setStroke(
        status == Status.NEW
            ? new BasicStroke(2f)
            : status == Status.HAVE
                ? new BasicStroke(1.1f)
                : new BasicStroke(
                    1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {2, 2}, 0));
    g.draw(symbol.outline());
    Rectangle2D box = symbol.outline().getBounds2D();
    if (well) {
      g.fill(new Ellipse2D.Double(box.getCenterX() - 2, box.getCenterY() - 2, 4, 4));
    }
    if (!symbol.letter().isEmpty()) {
      Type type = Type.SMALL;
      g.setFont(type.font());
      g.drawString(
          symbol.letter(),
          (float) (box.getCenterX() - type.width(symbol.letter()) / 2),
          (float) (box.getCenterY() + type.ascent() * 0.38));
    }
  }

  private static Color fill(Symbol symbol, Status status, Palette palette) {
    if (!symbol.watery() || status == Status.REMOVE) {
      return palette.map();
    }
    Color water = palette.water();
    Color ground = palette.map();
    return new Color(
        (water.getRed() + 2 * ground.getRed()) / 3,
        (water.getGreen() + 2 * ground.getGreen()) / 3,
        (water.getBlue() + 2 * ground.getBlue()) / 3);
  }
}
