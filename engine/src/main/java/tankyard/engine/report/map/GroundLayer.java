package tankyard.engine.report.map;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/** Tints and contours of the ground. */
final class GroundLayer {
  /** About so many contours; fewer say too little, more hide the lines. */
  private static final int CONTOURS = 12;

  private static final int INDEX = 5;
  private static final double LEAST_LABELLED = 90;

  /** Where less of the page than this has known ground, contours would mislead. */
  private static final double LEAST_KNOWN = 0.3;

  private final Contours contours;
  private final Palette palette;
  private final Unit unit;
  private final double step;

  GroundLayer(Contours contours, Palette palette, UnitSystem units) {
    this.contours = contours;
    this.palette = palette;
    this.unit = units.unit(Dimension.ELEVATION);
    double range = unit.fromSi(contours.highest()) - unit.fromSi(contours.lowest());
    this.step = range > 0 ? RoundSteps.atLeast(range / CONTOURS) : 0;
  }

  /** For the legend: "contours every 5 ft". */
  String words() {
    return "contours every " + Figures.significant(step, 3) + " " + unit.symbol();
  }

  /** Whether enough of the ground is known to draw it. */
  boolean covers(Frame frame) {
    Geometry window = window(frame);
    return step > 0
        && contours.known().intersection(window).getArea() >= LEAST_KNOWN * window.getArea();
  }

  void paint(Graphics2D g, Frame frame, Labels labels) {
    Geometry window = window(frame);
    Curves curves = new Curves(frame, window.getBoundary().union(contours.known().getBoundary()));
    List<Double> levels = levels();
    fill(g, curves, contours.above(contours.lowest() - 1).intersection(window), 0);
    for (int i = 0; i < levels.size(); i++) {
      Geometry above = contours.above(unit.toSi(levels.get(i))).intersection(window);
      fill(g, curves, above, (i + 1.0) / levels.size());
    }
    for (double level : levels) {
      boolean index = Math.round(level / step) % INDEX == 0;
      g.setColor(palette.contour());
      g.setStroke(new BasicStroke(index ? 1.3f : 0.6f));
      for (LineString line : contours.at(unit.toSi(level))) {
        Geometry seen = line.intersection(window);
        for (int i = 0; i < seen.getNumGeometries(); i++) {
          contour(g, curves, (LineString) seen.getGeometryN(i), level, labels);
        }
      }
    }
  }

  private List<Double> levels() {
    List<Double> levels = new ArrayList<>();
    double top = unit.fromSi(contours.highest());
    double first = Math.floor(unit.fromSi(contours.lowest()) / step) * step + step;
    for (int i = 0; first + i * step < top; i++) {
      levels.add(first + i * step);
    }
    return levels;
  }

  private static Geometry window(Frame frame) {
    double wide = frame.page().getWidth() / frame.scale();
    double high = frame.page().getHeight() / frame.scale();
    return new GeometryFactory()
        .toGeometry(
            new Envelope(
                frame.westM(), frame.westM() + wide, frame.northM() - high, frame.northM()));
  }

  private void fill(Graphics2D g, Curves curves, Geometry ground, double share) {
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    for (int i = 0; i < ground.getNumGeometries(); i++) {
      if (ground.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        path.append(curves.path(polygon.getExteriorRing()), false);
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          path.append(curves.path(polygon.getInteriorRingN(hole)), false);
        }
      }
    }
    g.setColor(palette.ground(share));
    g.fill(path);
  }

  private void contour(Graphics2D g, Curves curves, LineString line, double level, Labels labels) {
    Frame frame = curves.frame();
    if (line.isEmpty()) {
      return;
    }
    g.draw(curves.path(line));
    if (line.getLength() * frame.scale() >= LEAST_LABELLED) {
      List<Point2D> points = new ArrayList<>();
      for (Coordinate c : line.getCoordinates()) {
        points.add(frame.at(c.x, c.y));
      }
      labels.contour(points, Figures.significant(level, 6) + " " + unit.symbol());
    }
  }
}
