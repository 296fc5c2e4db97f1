package tankyard.engine.fluids;

import tankyard.engine.numeric.Roots;

/**
 * The gas equation of Dranchuk and Abou-Kassem (1975) at one reduced temperature, for {@code r =
 * 0.27 Pr / (z Tr)}:
 *
 * <p>{@code z = 1 + c1 r + c2 r^2 - c3 r^5 + 0.6134 (1 + 0.721 r^2) r^2 / Tr^3 exp(-0.721 r^2)}.
 *
 * <p>Given Tr and Pr it is solved for r, starting from nothing and taking the first crossing: below
 * the critical temperature that is the gas, not the liquid.
 */
final class DranchukAbouKassem {
  private static final double[] A = {
    0.3265, -1.07, -0.5339, 0.01569, -0.05165, 0.5475, -0.7361, 0.1844, 0.1056, 0.6134, 0.721
  };
  private static final double STEP = 0.05;
  private static final double DENSEST = 4;

  final double c1;
  final double c2;
  final double c3;
  private final double reducedT;
  private final double cubed;

  DranchukAbouKassem(double reducedT) {
    if (!(reducedT > 0)) {
      throw new IllegalArgumentException("A reduced temperature must be above zero: " + reducedT);
    }
    this.reducedT = reducedT;
    cubed = reducedT * reducedT * reducedT;
    c1 =
        A[0]
            + A[1] / reducedT
            + A[2] / cubed
            + A[3] / (cubed * reducedT)
            + A[4] / (cubed * reducedT * reducedT);
    double second = A[6] / reducedT + A[7] / (reducedT * reducedT);
    c2 = A[5] + second;
    c3 = A[8] * second;
  }

  double z(double reducedP) {
    if (!(reducedP >= 0)) {
      throw new IllegalArgumentException("A reduced pressure can't be below zero: " + reducedP);
    }
    double ideal = 0.27 * reducedP / reducedT;
    if (ideal == 0) {
      return 1;
    }
    return ideal / density(ideal);
  }

  /** The reduced density r at which {@code r z(r)} is what an ideal gas would have. */
  private double density(double ideal) {
    double low = 0;
    double high = Math.min(STEP, 2 * ideal);
    while (high * zAtDensity(high) < ideal) {
      low = high;
      high += STEP;
      if (high > DENSEST) {
        throw new IllegalArgumentException(
            "No gas at reduced temperature " + reducedT + ": the pressure is far out of range");
      }
    }
    return Roots.between("gas density", r -> r * zAtDensity(r) - ideal, low, high);
  }

  double zAtDensity(double r) {
    double square = r * r;
    double last = A[9] * (1 + A[10] * square) * square / cubed * Math.exp(-A[10] * square);
    return 1 + c1 * r + c2 * square - c3 * square * square * r + last;
  }
}
