package tankyard.engine.vessels;

/** Half an ellipsoid. With the depth of the radius it is a hemisphere, with half of it 2:1. */
public record EllipsoidalHead(double radiusM, double depthM) implements Head {
  public EllipsoidalHead {
    if (!(radiusM > 0 && depthM > 0)) {
      throw new IllegalArgumentException("A head needs a radius and a depth above zero");
    }
  }

  @Override
  public double lyingM3(double heightM) {
    return Math.PI * depthM * heightM * heightM * (1 - heightM / (3 * radiusM)) / 2;
  }

  @Override
  public double standingM3(double heightM) {
    double h = Math.min(heightM, depthM);
    double x = h / depthM;
    return Math.PI * radiusM * radiusM * h * (x - x * x / 3);
  }

  @Override
  public String words() {
    double flatness = radiusM / depthM;
    if (Math.abs(flatness - 1) < 1e-9) {
      return "hemispherical";
    }
    return Math.abs(flatness - 2) < 1e-9 ? "2:1 ellipsoidal" : "ellipsoidal";
  }
}
