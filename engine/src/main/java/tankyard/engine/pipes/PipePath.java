package tankyard.engine.pipes;

import java.util.Arrays;

/**
 * Where a pipe lies: stations along it and the height of the pipe at each. Straight between
 * stations, so hills and hollows need a station at their top and bottom.
 */
public final class PipePath {
  private final double[] distanceM;
  private final double[] elevationM;

  private PipePath(double[] distanceM, double[] elevationM) {
    this.distanceM = distanceM;
    this.elevationM = elevationM;
  }

  /**
   * A path through stations.
   *
   * @param distanceM along the pipe, rising
   * @param elevationM above the site datum, of the pipe and not of the ground
   */
  public static PipePath of(double[] distanceM, double[] elevationM) {
    if (distanceM.length != elevationM.length || distanceM.length < 2) {
      throw new IllegalArgumentException("A pipe needs as many distances as heights, two at least");
    }
    for (int i = 0; i < distanceM.length; i++) {
      boolean forward = i == 0 || distanceM[i] > distanceM[i - 1];
      if (!forward || !Double.isFinite(distanceM[i]) || !Double.isFinite(elevationM[i])) {
        throw new IllegalArgumentException(
            "Station " + (i + 1) + " at " + distanceM[i] + " m does not lie beyond the one before");
      }
    }
    return new PipePath(distanceM.clone(), elevationM.clone());
  }

  /** A straight pipe that rises evenly; a fall is below zero. */
  public static PipePath straight(double lengthM, double riseM) {
    return of(new double[] {0, lengthM}, new double[] {0, riseM});
  }

  /** The same path walked from its end, which becomes distance zero. */
  PipePath reversed() {
    int n = distanceM.length;
    double[] along = new double[n];
    double[] up = new double[n];
    for (int i = 0; i < n; i++) {
      along[i] = distanceM[n - 1] - distanceM[n - 1 - i];
      up[i] = elevationM[n - 1 - i];
    }
    return new PipePath(along, up);
  }

  /** The part between two distances from its start. */
  PipePath between(double fromM, double toM) {
    double[] distance = new double[stations() + 2];
    double[] elevation = new double[stations() + 2];
    int count = 0;
    distance[count] = fromM;
    elevation[count++] = elevationAt(fromM);
    for (int i = 0; i < stations(); i++) {
      double here = distanceM[i] - distanceM[0];
      if (here > fromM && here < toM) {
        distance[count] = here;
        elevation[count++] = elevationM[i];
      }
    }
    distance[count] = toM;
    elevation[count++] = elevationAt(toM);
    return of(Arrays.copyOf(distance, count), Arrays.copyOf(elevation, count));
  }

  private double elevationAt(double fromStartM) {
    for (int i = 1; i < stations(); i++) {
      double before = distanceM[i - 1] - distanceM[0];
      double here = distanceM[i] - distanceM[0];
      if (fromStartM <= here) {
        double share = (fromStartM - before) / (here - before);
        return elevationM[i - 1] + share * (elevationM[i] - elevationM[i - 1]);
      }
    }
    return elevationM[stations() - 1];
  }

  public int stations() {
    return distanceM.length;
  }

  public double distance(int station) {
    return distanceM[station];
  }

  public double elevation(int station) {
    return elevationM[station];
  }

  public double lengthM() {
    return distanceM[distanceM.length - 1] - distanceM[0];
  }

  public double riseM() {
    return elevationM[elevationM.length - 1] - elevationM[0];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PipePath path
        && Arrays.equals(distanceM, path.distanceM)
        && Arrays.equals(elevationM, path.elevationM);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(distanceM) + Arrays.hashCode(elevationM);
  }

  @Override
  public String toString() {
    return "PipePath[" + stations() + " stations, " + lengthM() + " m]";
  }
}
