package tankyard.engine.numeric;

import java.util.Arrays;

/**
 * A two-way table read by straight lines in both directions. Beyond an edge the edge value holds;
 * {@link #covers} says whether it did.
 */
public final class Grid {
  private final double[] x;
  private final double[] y;
  private final double[][] z;

  private Grid(double[] x, double[] y, double[][] z) {
    this.x = x;
    this.y = y;
    this.z = z;
  }

  /** From three columns in which {@code y} runs fastest and the grid has no holes. */
  public static Grid of(double[] xColumn, double[] yColumn, double[] zColumn) {
    double[] x = Arrays.stream(xColumn).distinct().sorted().toArray();
    double[] y = Arrays.stream(yColumn).distinct().sorted().toArray();
    if (x.length < 2 || y.length < 2 || x.length * y.length != zColumn.length) {
      throw new IllegalArgumentException("The table is no full grid");
    }
    double[][] z = new double[x.length][y.length];
    for (int k = 0; k < zColumn.length; k++) {
      z[Arrays.binarySearch(x, xColumn[k])][Arrays.binarySearch(y, yColumn[k])] = zColumn[k];
    }
    return new Grid(x, y, z);
  }

  public boolean covers(double atX, double atY) {
    return atX >= x[0] && atX <= x[x.length - 1] && atY >= y[0] && atY <= y[y.length - 1];
  }

  public double at(double wantedX, double wantedY) {
    double atX = Math.min(Math.max(wantedX, x[0]), x[x.length - 1]);
    double atY = Math.min(Math.max(wantedY, y[0]), y[y.length - 1]);
    int i = cell(x, atX);
    int j = cell(y, atY);
    double u = (atX - x[i]) / (x[i + 1] - x[i]);
    double v = (atY - y[j]) / (y[j + 1] - y[j]);
    return (1 - u) * ((1 - v) * z[i][j] + v * z[i][j + 1])
        + u * ((1 - v) * z[i + 1][j] + v * z[i + 1][j + 1]);
  }

  private static int cell(double[] edges, double at) {
    int found = Arrays.binarySearch(edges, at);
    int i = found >= 0 ? found : -found - 2;
    return Math.min(i, edges.length - 2);
  }
}
