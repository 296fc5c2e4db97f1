package tankyard.engine.report.map;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
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

  /** For the legend: "Contours every 5 ft"; empty where the ground is flat or unknown. */
  String words() {
    return step > 0 ? "Contours every " + Figures.significant(step, 3) + " " + unit.symbol() : "";
  }

  void paint(Graphics2D g, Frame frame, Labels labels) {
    if (step == 0) {
      return;
    }
    Geometry window = window(frame);
    List<Double> levels = levels();
    fill(g, frame, contours.above(contours.lowest() - 1).intersection(window), 0);
    for (int i = 0; i < levels.size(); i++) {
      Geometry above = contours.above(unit.toSi(levels.get(i))).intersection(window);
      fill(g, frame, above, (i + 1.0) / levels.size());
    }
    for (double level : levels) {
      boolean index = Math.round(level / step) % INDEX == 0;
      g.setColor(palette.contour());
      g.setStroke(new BasicStroke(index ? 1.3f : 0.6f));
      for (LineString line : contours.at(unit.toSi(level))) {
        Geometry seen = line.intersection(window);
        for (int i = 0; i < seen.getNumGeometries(); i++) {
          contour(g, frame, (LineString) seen.getGeometryN(i), level, labels);
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

  private void fill(Graphics2D g, Frame frame, Geometry ground, double share) {
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    for (int i = 0; i < ground.getNumGeometries(); i++) {
      if (ground.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        path.append(path(frame, polygon.getExteriorRing(), true), false);
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          path.append(path(frame, polygon.getInteriorRingN(hole), true), false);
        }
      }
    }
    g.setColor(palette.ground(share));
    g.fill(path);
  }

  private void contour(Graphics2D g, Frame frame, LineString line, double level, Labels labels) {
    if (line.isEmpty()) {
      return;
    }
    g.draw(path(frame, line, false));
    if (line.getLength() * frame.scale() >= LEAST_LABELLED) {
      List<Point2D> points = new ArrayList<>();
      for (Coordinate c : line.getCoordinates()) {
        points.add(frame.at(c.x, c.y));
      }
      labels.contour(points, Figures.significant(level, 6) + " " + unit.symbol());
    }
  }

  private static Shape path(Frame frame, LineString line, boolean closed) {
    Path2D path = new Path2D.Double();
    Coordinate[] corners = line.getCoordinates();
    for (int i = 0; i < corners.length; i++) {
      Point2D at = frame.at(corners[i].x, corners[i].y);
      if (i == 0) {
        path.moveTo(at.getX(), at.getY());
      } else {
        path.lineTo(at.getX(), at.getY());
      }
    }
    if (closed) {
      path.closePath();
    }
    return path;
  }
}
