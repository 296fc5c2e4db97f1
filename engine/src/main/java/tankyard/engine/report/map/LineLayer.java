package tankyard.engine.report.map;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Status;

/** The lines with arrows from start to end. */
final class LineLayer {
  /** Shorter stretches have no room for an arrow. */
  private static final double LEAST_FOR_ARROW = 26;

  private static final double ARROWS_APART = 260;

  private final Lease lease;
  private final Palette palette;

  LineLayer(Lease lease, Palette palette) {
    this.lease = lease;
    this.palette = palette;
  }

  void paint(Graphics2D g, Frame frame, Labels labels) {
    List<Line> drawn = lease.lines();
    for (Line line : drawn) {
      g.setColor(palette.map());
      g.setStroke(LineLook.casing(line));
      g.draw(path(way(line, frame)));
    }
    for (Line line : drawn) {
      boolean goes = line.status() == Status.REMOVE;
      g.setColor(goes ? palette.faint() : palette.line(line.service()));
      g.setStroke(LineLook.of(line));
      List<Point2D> way = way(line, frame);
      g.draw(path(way));
      labels.keepOff(way);
      arrows(g, frame, way);
    }
  }

  /** Its corners on the page; fewer than two where an end is missing. */
  List<Point2D> way(Line line, Frame frame) {
    List<Point2D> way = new ArrayList<>();
    lease.thing(line.from()).ifPresent(t -> way.add(frame.at(t.at())));
    line.route().stream().map(RoutePoint::at).forEach(p -> way.add(frame.at(p)));
    lease.thing(line.to()).ifPresent(t -> way.add(frame.at(t.at())));
    return way;
  }

  private static Path2D path(List<Point2D> way) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < way.size(); i++) {
      if (i == 0) {
        path.moveTo(way.get(i).getX(), way.get(i).getY());
      } else {
        path.lineTo(way.get(i).getX(), way.get(i).getY());
      }
    }
    return path;
  }

  /** One arrow in the middle of each long stretch, more where it is very long. */
  private void arrows(Graphics2D g, Frame frame, List<Point2D> way) {
    double since = ARROWS_APART;
    for (int i = 1; i < way.size(); i++) {
      Point2D from = way.get(i - 1);
      Point2D to = way.get(i);
      double length = from.distance(to);
      since += length;
      if (length >= LEAST_FOR_ARROW && since >= ARROWS_APART / 2) {
        int count = (int) Math.max(1, Math.round(length / ARROWS_APART));
        for (int k = 0; k < count; k++) {
          arrow(g, frame, from, to, (k + 0.5) / count);
        }
        since = 0;
      }
    }
  }

  private static void arrow(Graphics2D g, Frame frame, Point2D from, Point2D to, double share) {
    Point2D at =
        new Point2D.Double(
            from.getX() + share * (to.getX() - from.getX()),
            from.getY() + share * (to.getY() - from.getY()));
    if (!frame.shows(at)) {
      return;
    }
    Path2D head = new Path2D.Double();
    head.moveTo(7, 0);
    head.lineTo(-5, 5);
    head.lineTo(-2.5, 0);
    head.lineTo(-5, -5);
    head.closePath();
    AffineTransform turn = AffineTransform.getTranslateInstance(at.getX(), at.getY());
    turn.rotate(to.getX() - from.getX(), to.getY() - from.getY());
    g.fill(turn.createTransformedShape(head));
  }
}
