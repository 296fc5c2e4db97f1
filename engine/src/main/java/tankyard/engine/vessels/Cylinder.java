package tankyard.engine.vessels;

/** The circle's segment under a liquid surface. */
final class Cylinder {
  private Cylinder() {}

  /** Area below a height above the lowest point of a circle, height 0 to 2 R. */
  static double segmentM2(double radiusM, double heightM) {
    if (heightM <= 0) {
      return 0;
    }
    double below = radiusM - Math.min(heightM, 2 * radiusM);
    return radiusM * radiusM * halfAngle(radiusM, heightM)
        - below * Math.sqrt(Math.max(0, radiusM * radiusM - below * below));
  }

  /** Half the angle at the centre that the liquid surface spans, radians. */
  static double halfAngle(double radiusM, double heightM) {
    double below = radiusM - Math.min(Math.max(heightM, 0), 2 * radiusM);
    return Math.acos(Math.max(-1, Math.min(1, below / radiusM)));
  }
}
