package tankyard.engine.vessels;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * A dished head: a crown of radius {@code crown} diameters joined to the shell by a knuckle of
 * radius {@code knuckle} diameters. The usual one (flanged and dished) has 1 and 0.06.
 *
 * @param crown crown radius over the vessel's diameter, at least a half
 * @param knuckle knuckle radius over the vessel's diameter, below a half
 */
public record TorisphericalHead(double radiusM, double crown, double knuckle) implements Head {
  private static final GaussIntegrator UNIT = new GaussIntegratorFactory().legendre(60, 0, 1);

  public TorisphericalHead {
    if (!(radiusM > 0 && crown >= 0.5 && knuckle > 0 && knuckle < 0.5 && knuckle <= crown)) {
      throw new IllegalArgumentException(
          "No head of crown " + crown + " and knuckle " + knuckle + " diameters fits a shell");
    }
  }

  public static TorisphericalHead flangedAndDished(double radiusM) {
    return new TorisphericalHead(radiusM, 1, 0.06);
  }

  @Override
  public double depthM() {
    return crownM() - (crownM() - knuckleM()) * cosine();
  }

  @Override
  public double lyingM3(double heightM) {
    double above = heightM - radiusM;
    return integral(
        r -> Cylinder.segmentM2(r, Math.min(2 * r, Math.max(0, above + r))),
        0,
        depthM(),
        whereRadiusIs(Math.abs(above)));
  }

  @Override
  public double standingM3(double heightM) {
    double h = Math.min(heightM, depthM());
    return integral(r -> Math.PI * r * r, depthM() - h, depthM(), depthM() - h);
  }

  @Override
  public String words() {
    return "torispherical";
  }

  /** Sums over the head, cut where the shape or the filling bends so that each piece is smooth. */
  private double integral(Slice slice, double from, double to, double bend) {
    double[] cuts = {from, Math.max(from, joint()), Math.max(from, Math.min(to, bend)), to};
    java.util.Arrays.sort(cuts);
    double sum = 0;
    for (int i = 1; i < cuts.length; i++) {
      double low = cuts[i - 1];
      double width = cuts[i] - low;
      // Crowded towards both ends, where radii and segments go like a square root.
      sum +=
          UNIT.integrate(
              t ->
                  width
                      * 6
                      * t
                      * (1 - t)
                      * slice.area(radiusAt(low + width * t * t * (3 - 2 * t))));
    }
    return sum;
  }

  private double radiusAt(double beyondSeam) {
    if (beyondSeam <= joint()) {
      return radiusM - knuckleM() + Math.sqrt(square(knuckleM()) - square(beyondSeam));
    }
    double fromCentre = beyondSeam + (crownM() - knuckleM()) * cosine();
    return Math.sqrt(Math.max(0, square(crownM()) - square(fromCentre)));
  }

  private double whereRadiusIs(double radius) {
    if (radius >= crownM() * sine()) {
      double across = Math.min(knuckleM(), Math.max(0, radius - radiusM + knuckleM()));
      return Math.sqrt(square(knuckleM()) - square(across));
    }
    return Math.sqrt(square(crownM()) - square(radius)) - (crownM() - knuckleM()) * cosine();
  }

  /** Where the knuckle meets the crown, beyond the seam. */
  private double joint() {
    return knuckleM() * cosine();
  }

  private double sine() {
    return (radiusM - knuckleM()) / (crownM() - knuckleM());
  }

  private double cosine() {
    return Math.sqrt(1 - square(sine()));
  }

  private double crownM() {
    return 2 * radiusM * crown;
  }

  private double knuckleM() {
    return 2 * radiusM * knuckle;
  }

  private static double square(double x) {
    return x * x;
  }

  /** Wetted area of a slice across the head. */
  private interface Slice {
    double area(double radius);
  }
}
