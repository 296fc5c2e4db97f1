package tankyard.engine.numeric;

import java.util.Arrays;

/**
 * A smooth curve through table points that never swings between them: where the points rise the
 * curve rises. Cubic pieces with the slopes of Fritsch and Butland (SIAM J. Sci. Stat. Comput. 5,
 * 1984; from memory). Beyond the ends the end value holds; {@link #covers} says whether it did.
 */
public final class MonotoneCurve {
  private final double[] x;
  private final double[] y;
  private final double[] slope;

  private MonotoneCurve(double[] x, double[] y) {
    if (x.length != y.length || x.length < 2) {
      throw new IllegalArgumentException("A curve needs as many x as y, two at least");
    }
    for (int i = 1; i < x.length; i++) {
      if (!(x[i] > x[i - 1])) {
        throw new IllegalArgumentException("x must rise: " + x[i - 1] + ", " + x[i]);
      }
    }
    this.x = x.clone();
    this.y = y.clone();
    slope = slopes(x, y);
  }

  public static MonotoneCurve through(double[] x, double[] y) {
    return new MonotoneCurve(x, y);
  }

  public boolean covers(double at) {
    return at >= x[0] && at <= x[x.length - 1];
  }

  public double first() {
    return x[0];
  }

  public double last() {
    return x[x.length - 1];
  }

  public double at(double wanted) {
    double point = Math.min(Math.max(wanted, first()), last());
    int found = Arrays.binarySearch(x, point);
    if (found >= 0) {
      return y[found];
    }
    int i = -found - 2;
    double h = x[i + 1] - x[i];
    double t = (point - x[i]) / h;
    double t2 = t * t;
    double t3 = t2 * t;
    return (2 * t3 - 3 * t2 + 1) * y[i]
        + (t3 - 2 * t2 + t) * h * slope[i]
        + (3 * t2 - 2 * t3) * y[i + 1]
        + (t3 - t2) * h * slope[i + 1];
  }

  private static double[] slopes(double[] x, double[] y) {
    int n = x.length;
    double[] secant = new double[n - 1];
    for (int i = 0; i < n - 1; i++) {
      secant[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
    }
    double[] slope = new double[n];
    slope[0] = secant[0];
    slope[n - 1] = secant[n - 2];
    for (int i = 1; i < n - 1; i++) {
      slope[i] = weighted(secant[i - 1], secant[i], x[i] - x[i - 1], x[i + 1] - x[i]);
    }
    return slope;
  }

  /** Harmonic mean of two slopes of one sign; flat where the points turn. */
  private static double weighted(double before, double after, double hBefore, double hAfter) {
    if (before * after <= 0) {
      return 0;
    }
    double alpha = (1 + hAfter / (hBefore + hAfter)) / 3;
    return before * after / (alpha * after + (1 - alpha) * before);
  }
}
