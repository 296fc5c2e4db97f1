package tankyard.engine.report.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * Finds each label a place where nothing else stands. Things and lines are kept off first; then
 * labels come one after the other, and each takes the first free place near what it names.
 */
final class Labels {
  /** How far off, in points, a label may stand; far ones get a leader. */
  private static final double[] FAR = {4, 12, 22, 34, 48, 64, 84, 108};

  private static final double NEAR_ENOUGH = 12;
  private static final double[] SHARES = {0.5, 0.38, 0.62, 0.28, 0.72, 0.18, 0.82};

  private final Rectangle2D frame;
  private final List<Geometry> taken = new ArrayList<>();
  private final List<Geometry> lines = new ArrayList<>();
  private final List<Waiting> contours = new ArrayList<>();
  private final List<Placed> placed = new ArrayList<>();

  Labels(Rectangle2D frame) {
    this.frame = frame;
  }

  /** A label that has its place; x and y are its middle. */
  record Placed(
      String text, Type type, Color color, double x, double y, double angle, Geometry box) {}

  private record Waiting(List<Point2D> way, String text) {}

  void keepOff(Rectangle2D box) {
    taken.add(Boxes.box(box.getX(), box.getY(), box.getWidth(), box.getHeight()));
  }

  void keepOff(List<Point2D> way) {
    if (way.size() > 1) {
      lines.add(Boxes.line(way));
    }
  }

  /** A contour's height, placed last, where there is room. */
  void contour(List<Point2D> way, String text) {
    contours.add(new Waiting(way, text));
  }

  /** Names a thing beside its symbol; every thing gets its name, with a leader if need be. */
  void thing(Graphics2D g, Rectangle2D symbol, String text, Type type, Color color) {
    double wide = type.width(text);
    double high = type.height();
    Geometry best = null;
    double bestGap = 0;
    for (double gap : FAR) {
      for (Geometry spot : around(symbol, wide, high, gap)) {
        boolean clear = fits(spot) && lines.stream().noneMatch(spot::intersects);
        if (clear || (gap > FAR[2] && fits(spot))) {
          best = spot;
          bestGap = gap;
          break;
        }
      }
      if (best != null) {
        break;
      }
    }
    if (best == null) {
      return;
    }
    if (bestGap > NEAR_ENOUGH) {
      leader(g, symbol, best, color);
    }
    Coordinate middle = best.getCentroid().getCoordinate();
    place(text, type, color, middle.x, middle.y, 0, best);
  }

  private static void leader(Graphics2D g, Rectangle2D symbol, Geometry box, Color color) {
    Coordinate to = box.getCentroid().getCoordinate();
    Coordinate from = new Coordinate(symbol.getCenterX(), symbol.getCenterY());
    Geometry seen = Boxes.line(from, to).difference(box).difference(Boxes.box(symbol));
    if (seen.getNumPoints() >= 2) {
      Coordinate[] ends = seen.getCoordinates();
      g.setColor(color);
      g.setStroke(new BasicStroke(0.7f));
      g.draw(
          new Line2D.Double(
              ends[0].x, ends[0].y, ends[ends.length - 1].x, ends[ends.length - 1].y));
    }
  }

  /** East, west, above, below, then the corners. */
  private static List<Geometry> around(Rectangle2D s, double wide, double high, double gap) {
    double w = wide + 2 * Boxes.ROOM;
    double h = high + 2 * Boxes.ROOM;
    double east = s.getMaxX() + gap;
    double west = s.getX() - gap - w;
    double above = s.getY() - gap - h;
    double below = s.getMaxY() + gap;
    double midX = s.getCenterX() - w / 2;
    double midY = s.getCenterY() - h / 2;
    double in = gap * 0.3;
    return List.of(
        Boxes.box(east, midY, w, h),
        Boxes.box(midX, above, w, h),
        Boxes.box(midX, below, w, h),
        Boxes.box(west, midY, w, h),
        Boxes.box(east - in, above + in, w, h),
        Boxes.box(east - in, below - in, w, h),
        Boxes.box(west + in, above + in, w, h),
        Boxes.box(west + in, below - in, w, h));
  }

  /** Names a line with the first of these texts that finds room, or not at all. */
  void along(List<Point2D> way, List<String> texts, Type type, Color color) {
    for (String text : texts) {
      if (along(way, text, type, color)) {
        return;
      }
    }
  }

  private boolean along(List<Point2D> way, String text, Type type, Color color) {
    for (int i : longestFirst(way)) {
      for (double share : SHARES) {
        for (int side : new int[] {-1, 1}) {
          if (along(way.get(i), way.get(i + 1), share, side, text, type, color)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private boolean along(
      Point2D from, Point2D to, double share, int side, String text, Type type, Color color) {
    double wide = type.width(text);
    if (from.distance(to) < wide * 0.9) {
      return false;
    }
    double angle = Boxes.upright(Math.atan2(to.getY() - from.getY(), to.getX() - from.getX()));
    double off = side * (type.height() / 2 + 5);
    double x = from.getX() + share * (to.getX() - from.getX()) - off * Math.sin(angle);
    double y = from.getY() + share * (to.getY() - from.getY()) + off * Math.cos(angle);
    Geometry box = Boxes.turned(x, y, wide, type.height(), angle);
    if (!fits(box) || lines.stream().anyMatch(box::intersects)) {
      return false;
    }
    place(text, type, color, x, y, angle, box);
    return true;
  }

  /** Places the heights of contours on their lines and draws all labels. */
  void paint(Graphics2D g, Palette palette) {
    for (Waiting waiting : contours) {
      onContour(waiting, palette);
    }
    for (Placed label : placed) {
      paint(g, label, palette);
    }
  }

  private void onContour(Waiting waiting, Palette palette) {
    for (int i : longestFirst(waiting.way())) {
      Point2D from = waiting.way().get(i);
      Point2D to = waiting.way().get(i + 1);
      double x = (from.getX() + to.getX()) / 2;
      double y = (from.getY() + to.getY()) / 2;
      double angle = Boxes.upright(Math.atan2(to.getY() - from.getY(), to.getX() - from.getX()));
      Type type = Type.SMALL;
      Geometry box = Boxes.turned(x, y, type.width(waiting.text()), type.height(), angle);
      if (fits(box) && lines.stream().noneMatch(box::intersects)) {
        place(waiting.text(), type, palette.contour(), x, y, angle, box);
        return;
      }
    }
  }

  private void place(
      String text, Type type, Color color, double x, double y, double angle, Geometry box) {
    taken.add(box);
    placed.add(new Placed(text, type, color, x, y, angle, box));
  }

  private boolean fits(Geometry box) {
    return frameHolds(box) && taken.stream().noneMatch(box::intersects);
  }

  private boolean frameHolds(Geometry box) {
    for (Coordinate c : box.getCoordinates()) {
      if (!frame.contains(c.x, c.y)) {
        return false;
      }
    }
    return true;
  }

  /** All labels that found a place. */
  List<Placed> placed() {
    return List.copyOf(placed);
  }

  private static void paint(Graphics2D g, Placed label, Palette palette) {
    AffineTransform before = g.getTransform();
    double wide = label.type().width(label.text());
    double high = label.type().height();
    g.translate(label.x(), label.y());
    g.rotate(label.angle());
    double left = -wide / 2;
    double top = -high / 2;
    g.setColor(palette.veil());
    g.fill(new RoundRectangle2D.Double(left - Boxes.ROOM, top, wide + 2 * Boxes.ROOM, high, 5, 5));
    g.setColor(label.color());
    g.setFont(label.type().font());
    g.drawString(label.text(), (float) left, (float) (top + label.type().ascent()));
    g.setTransform(before);
  }

  private static List<Integer> longestFirst(List<Point2D> way) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i + 1 < way.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingDouble(i -> -way.get(i).distance(way.get(i + 1))));
    return order;
  }
}
