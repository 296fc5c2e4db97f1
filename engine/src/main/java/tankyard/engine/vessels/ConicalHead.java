package tankyard.engine.vessels;

/** A cone. */
public record ConicalHead(double radiusM, double depthM) implements Head {
  public ConicalHead {
    if (!(radiusM > 0 && depthM > 0)) {
      throw new IllegalArgumentException("A head needs a radius and a depth above zero");
    }
  }

  @Override
  public double lyingM3(double heightM) {
    double empty = Math.min(1, Math.abs(radiusM - heightM) / radiusM);
    double part = empty == 0 ? Math.PI / 2 : fraction(empty);
    double k = heightM <= radiusM ? part : Math.PI - part;
    return depthM * radiusM * radiusM / 3 * k;
  }

  /** acos m + m^3 acosh(1/m) - 2 m sqrt(1 - m^2) */
  private static double fraction(double m) {
    double root = Math.sqrt(1 - m * m);
    double acosh = Math.log((1 + root) / m);
    return Math.acos(m) + m * m * m * acosh - 2 * m * root;
  }

  @Override
  public double standingM3(double heightM) {
    double h = Math.min(heightM, depthM);
    double r = radiusM * h / depthM;
    return Math.PI / 3 * r * r * h;
  }

  @Override
  public String words() {
    return "conical";
  }
}
