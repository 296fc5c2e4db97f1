package tankyard.engine.report.map;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Outlines on the page that labels are kept apart by. */
final class Boxes {
  /** Room around a label. */
  static final double ROOM = 2;

  private static final GeometryFactory SHAPES = new GeometryFactory();

  private Boxes() {}

  /** The same direction, so that the text never stands on its head. */
  static double upright(double angle) {
    if (angle > Math.PI / 2) {
      return angle - Math.PI;
    }
    return angle <= -Math.PI / 2 ? angle + Math.PI : angle;
  }

  static Geometry box(Rectangle2D r) {
    return box(r.getX(), r.getY(), r.getWidth(), r.getHeight());
  }

  static Geometry box(double x, double y, double wide, double high) {
    return SHAPES.createPolygon(
        new Coordinate[] {
          new Coordinate(x, y),
          new Coordinate(x + wide, y),
          new Coordinate(x + wide, y + high),
          new Coordinate(x, y + high),
          new Coordinate(x, y)
        });
  }

  static Geometry turned(double x, double y, double wide, double high, double angle) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    double w = wide / 2 + ROOM;
    double h = high / 2;
    Coordinate[] ring = new Coordinate[5];
    double[][] corners = {{-w, -h}, {w, -h}, {w, h}, {-w, h}, {-w, -h}};
    for (int i = 0; i < 5; i++) {
      ring[i] =
          new Coordinate(
              x + corners[i][0] * cos - corners[i][1] * sin,
              y + corners[i][0] * sin + corners[i][1] * cos);
    }
    return SHAPES.createPolygon(ring);
  }

  static Geometry line(List<Point2D> way) {
    return SHAPES.createLineString(
        way.stream().map(p -> new Coordinate(p.getX(), p.getY())).toArray(Coordinate[]::new));
  }

  static Geometry line(Coordinate a, Coordinate b) {
    return SHAPES.createLineString(new Coordinate[] {a, b});
  }
}
