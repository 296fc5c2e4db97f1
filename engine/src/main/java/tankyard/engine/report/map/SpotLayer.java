package tankyard.engine.report.map;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import tankyard.engine.terrain.Spot;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/** Known heights as crosses with their number, where they are too few for contours. */
final class SpotLayer {
  private static final double ARM = 4;

  private final List<Spot> spots;
  private final Palette palette;
  private final Unit unit;

  SpotLayer(List<Spot> spots, Palette palette, UnitSystem units) {
    this.spots = spots;
    this.palette = palette;
    this.unit = units.unit(Dimension.ELEVATION);
  }

  void paint(Graphics2D g, Frame frame) {
    g.setColor(palette.faint());
    g.setStroke(new BasicStroke(1.2f));
    for (Spot spot : spots) {
      Point2D at = frame.at(spot.eastM(), spot.northM());
      if (frame.shows(at)) {
        cross(g, at.getX(), at.getY());
      }
    }
  }

  static void cross(Graphics2D g, double x, double y) {
    g.draw(new Line2D.Double(x - ARM, y - ARM, x + ARM, y + ARM));
    g.draw(new Line2D.Double(x - ARM, y + ARM, x + ARM, y - ARM));
  }

  void name(Graphics2D g, Frame frame, Labels labels) {
    for (Spot spot : spots) {
      Point2D at = frame.at(spot.eastM(), spot.northM());
      if (frame.shows(at)) {
        Rectangle2D box =
            new Rectangle2D.Double(at.getX() - ARM, at.getY() - ARM, 2 * ARM, 2 * ARM);
        String words = Figures.decimals(unit.fromSi(spot.groundM()), 0) + " " + unit.symbol();
        labels.thing(g, box, words, Type.SMALL, palette.faint());
      }
    }
  }
}
