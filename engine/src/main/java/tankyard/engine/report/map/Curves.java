package tankyard.engine.report.map;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;

/**
 * Rounds the bends that contours have where they pass from one flat triangle to the next: from the
 * middle of one stretch to the middle of the next the line swings round the bend. Ends, and bends
 * on the outline of the known heights or of the map, stay sharp, so that tints and lines agree.
 */
record Curves(Frame frame, Geometry sharp) {
  private static final double TOUCH_M = 0.01;

  Path2D path(LineString line) {
    Coordinate[] corners = line.getCoordinates();
    return line.isClosed() ? closed(corners, corners.length - 1) : open(corners);
  }

  private Path2D open(Coordinate[] corners) {
    Path2D path = new Path2D.Double();
    moveTo(path, corners[0]);
    for (int i = 1; i + 1 < corners.length; i++) {
      bend(path, corners[i - 1], corners[i], corners[i + 1]);
    }
    lineTo(path, corners[corners.length - 1]);
    return path;
  }

  private Path2D closed(Coordinate[] corners, int count) {
    int start = 0;
    while (start < count && !isSharp(corners[start])) {
      start++;
    }
    Path2D path = new Path2D.Double();
    moveTo(path, start < count ? corners[start] : middle(corners[0], corners[1]));
    for (int k = 1; k <= count; k++) {
      int i = (start + k) % count;
      bend(path, corners[(i + count - 1) % count], corners[i], corners[(i + 1) % count]);
    }
    path.closePath();
    return path;
  }

  private void bend(Path2D path, Coordinate before, Coordinate at, Coordinate after) {
    if (isSharp(at)) {
      lineTo(path, at);
      return;
    }
    lineTo(path, middle(before, at));
    Point2D bend = frame.at(at.x, at.y);
    Coordinate end = middle(at, after);
    Point2D to = frame.at(end.x, end.y);
    path.quadTo(bend.getX(), bend.getY(), to.getX(), to.getY());
  }

  private boolean isSharp(Coordinate at) {
    return sharp.getFactory().createPoint(at).distance(sharp) < TOUCH_M;
  }

  private void moveTo(Path2D path, Coordinate at) {
    Point2D to = frame.at(at.x, at.y);
    path.moveTo(to.getX(), to.getY());
  }

  private void lineTo(Path2D path, Coordinate at) {
    Point2D to = frame.at(at.x, at.y);
    path.lineTo(to.getX(), to.getY());
  }

  private static Coordinate middle(Coordinate a, Coordinate b) {
    return new Coordinate((a.x + b.x) / 2, (a.y + b.y) / 2);
  }
}
