package tankyard.engine.report.map;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.PowerPole;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Well;

/**
 * What a thing looks like from above.
 *
 * @param outline drawn and filled
 * @param letter in its middle: O for oil, W for water, G for a gun barrel; may be empty
 * @param watery whether it holds water and is filled so
 */
record Symbol(Shape outline, String letter, boolean watery) {
  private static final double WELL = 6;
  private static final double TEE = 4;
  private static final double LEAST_TANK = 8;
  private static final double LEAST_VESSEL = 7;
  private static final double PUMP = 8;

  /**
   * A thing's symbol.
   *
   * @param scale points a metre
   */
  static Symbol of(Thing thing, Point2D at, double scale) {
    if (thing instanceof Tank tank) {
      boolean water = tank.duty() == Tank.Duty.WATER;
      double radius = Math.max(LEAST_TANK, tank.diameter().metres() / 2 * scale);
      return new Symbol(circle(at, radius), water ? "W" : "O", water);
    }
    if (thing instanceof GunBarrel barrel) {
      double radius = Math.max(LEAST_TANK, barrel.diameter().metres() / 2 * scale);
      return new Symbol(circle(at, radius), "G", false);
    }
    if (thing instanceof Separator separator) {
      return new Symbol(vessel(separator, at, scale), "", false);
    }
    if (thing instanceof InjectionPump) {
      return new Symbol(square(at, PUMP), "P", true);
    }
    if (thing instanceof InjectionWell) {
      return new Symbol(triangle(at, WELL + 3), "", true);
    }
    if (thing instanceof PowerPole) {
      return new Symbol(square(at, TEE + 1), "", false);
    }
    if (thing instanceof Tee) {
      return new Symbol(diamond(at, TEE), "", false);
    }
    return new Symbol(circle(at, WELL), "", false);
  }

  static boolean isWell(Thing thing) {
    return thing instanceof Well;
  }

  private static Shape vessel(Separator separator, Point2D at, double scale) {
    double wide = separator.diameter().metres() * scale;
    if (separator.shape() == Separator.Shape.VERTICAL) {
      return circle(at, Math.max(LEAST_VESSEL, wide / 2));
    }
    double grow = Math.max(1, LEAST_VESSEL / wide);
    double high = wide * grow;
    double length = Math.max(2.2 * high, separator.length().metres() * scale);
    return new RoundRectangle2D.Double(
        at.getX() - length / 2, at.getY() - high / 2, length, high, high, high);
  }

  private static Shape circle(Point2D at, double radius) {
    return new Ellipse2D.Double(at.getX() - radius, at.getY() - radius, 2 * radius, 2 * radius);
  }

  private static Shape square(Point2D at, double half) {
    return new Rectangle2D.Double(at.getX() - half, at.getY() - half, 2 * half, 2 * half);
  }

  private static Shape diamond(Point2D at, double half) {
    return polygon(at, 0, -half, half, 0, 0, half, -half, 0);
  }

  /** Points down: into the ground. */
  private static Shape triangle(Point2D at, double half) {
    return polygon(at, -half, -half * 0.75, half, -half * 0.75, 0, half);
  }

  private static Shape polygon(Point2D at, double... xy) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < xy.length; i += 2) {
      if (i == 0) {
        path.moveTo(at.getX() + xy[0], at.getY() + xy[1]);
      } else {
        path.lineTo(at.getX() + xy[i], at.getY() + xy[i + 1]);
      }
    }
    path.closePath();
    return path;
  }
}
