package tankyard.engine.report.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.Landmark;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Outlined;
import tankyard.engine.lease.Status;
import tankyard.engine.study.Outlines;

/** Berms, landmarks, and how far to keep from these where that was typed. */
final class OutlineLayer {
  private static final Stroke SETBACK = dashed(1f, 2, 4);
  private static final Stroke GOES = dashed(1.2f, 2, 3);
  private static final Stroke WAY = dashed(1.4f);
  private static final Stroke PROPERTY_LINE = dashed(1.4f, 12, 3, 2, 3, 2, 3);
  private static final double SPOT = 4;

  private final Lease lease;
  private final Palette palette;

  OutlineLayer(Lease lease, Palette palette) {
    this.lease = lease;
    this.palette = palette;
  }

  void paint(Graphics2D g, Frame frame, Labels labels) {
    lease.landmarks().forEach(landmark -> setback(g, frame, landmark));
    lease.outlines().forEach(thing -> outline(g, frame, thing));
    lease.landmarks().stream()
        .filter(landmark -> frame.shows(frame.at(landmark.corners().get(0))))
        .forEach(landmark -> name(g, frame, labels, landmark));
  }

  private void setback(Graphics2D g, Frame frame, Landmark landmark) {
    g.setColor(palette.faint());
    g.setStroke(SETBACK);
    Outlines.setback(landmark).stream()
        .map(ring -> ring.stream().map(c -> frame.at(c[0], c[1])).toList())
        .forEach(ring -> g.draw(path(ring, true)));
  }

  private void outline(Graphics2D g, Frame frame, Outlined thing) {
    Path2D path = path(thing.corners().stream().map(frame::at).toList(), thing.closes());
    if (thing.corners().size() == 1) {
      g.setColor(palette.map());
      g.fill(spot(frame, thing));
      g.setColor(color(thing));
      g.setStroke(WAY);
      g.draw(spot(frame, thing));
      return;
    }
    if (thing instanceof Landmark && thing.closes()) {
      Color colour = color(thing);
      g.setColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), 45));
      g.fill(path);
    }
    g.setColor(color(thing));
    g.setStroke(stroke(thing));
    g.draw(path);
  }

  private void name(Graphics2D g, Frame frame, Labels labels, Landmark landmark) {
    Rectangle2D spot = spot(frame, landmark);
    labels.keepOff(spot);
    labels.thing(g, spot, landmark.name(), Type.SMALL, palette.faint());
  }

  private static Rectangle2D spot(Frame frame, Outlined thing) {
    Point2D at = frame.at(thing.corners().get(0));
    return new Rectangle2D.Double(at.getX() - SPOT, at.getY() - SPOT, 2 * SPOT, 2 * SPOT);
  }

  private Color color(Outlined thing) {
    boolean stays = thing.status().stays();
    return stays && thing instanceof Landmark landmark && landmark.what().isWater()
        ? palette.water()
        : palette.faint();
  }

  private static Stroke stroke(Outlined thing) {
    if (thing.status() == Status.REMOVE) {
      return GOES;
    }
    if (thing instanceof Berm) {
      return LineLook.BERM;
    }
    boolean line = thing instanceof Landmark l && l.what() == Landmark.What.PROPERTY_LINE;
    return line ? PROPERTY_LINE : WAY;
  }

  private static Path2D path(List<Point2D> corners, boolean closes) {
    Path2D path = new Path2D.Double();
    path.moveTo(corners.get(0).getX(), corners.get(0).getY());
    corners.forEach(c -> path.lineTo(c.getX(), c.getY()));
    if (closes) {
      path.closePath();
    }
    return path;
  }

  private static Stroke dashed(float width, float... dash) {
    return new BasicStroke(
        width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash.length == 0 ? null : dash, 0);
  }

  /** As they stand in the legend. */
  static void setbackStroke(Graphics2D g, Palette palette) {
    g.setColor(palette.faint());
    g.setStroke(SETBACK);
  }
}
