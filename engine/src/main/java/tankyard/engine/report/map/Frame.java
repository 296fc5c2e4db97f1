package tankyard.engine.report.map;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import tankyard.engine.lease.MapPoint;

/**
 * A rectangle on the page with a piece of the lease in it, to one scale in both directions.
 *
 * @param page the rectangle
 * @param westM map coordinate of its left edge
 * @param northM map coordinate of its upper edge
 * @param scale points a metre
 */
record Frame(Rectangle2D page, double westM, double northM, double scale) {

  /** The frame in which a piece of the lease, in metres, stands in the middle with room around. */
  static Frame around(Rectangle2D page, Rectangle2D lease, double roomPoints) {
    double scale =
        Math.min(
            (page.getWidth() - 2 * roomPoints) / lease.getWidth(),
            (page.getHeight() - 2 * roomPoints) / lease.getHeight());
    return new Frame(
        page,
        lease.getCenterX() - page.getWidth() / scale / 2,
        lease.getCenterY() + page.getHeight() / scale / 2,
        scale);
  }

  Point2D at(double eastM, double northing) {
    return new Point2D.Double(
        page.getX() + (eastM - westM) * scale, page.getY() + (northM - northing) * scale);
  }

  Point2D at(MapPoint place) {
    return at(place.east().metres(), place.north().metres());
  }

  boolean shows(Point2D point) {
    return page.contains(point);
  }
}
