package tankyard.engine.pipes;

import java.util.List;

/**
 * The stations of all runs of a line in a row, and the reaches between them: what a march needs and
 * no flow changes. Reach {@code i} lies between stations {@code i} and {@code i + 1}.
 */
final class Stations {
  private final double[] distanceM;
  private final double[] elevationM;
  private final double[] lengthM;
  private final double[] riseM;
  private final int[] run;
  private final int[] firstReach;

  Stations(List<PipeRun> runs) {
    int reaches = runs.stream().mapToInt(r -> r.path().stations() - 1).sum();
    distanceM = new double[reaches + 1];
    elevationM = new double[reaches + 1];
    lengthM = new double[reaches];
    riseM = new double[reaches];
    run = new int[reaches];
    firstReach = new int[runs.size()];
    elevationM[0] = runs.get(0).path().elevation(0);
    int next = 0;
    for (int r = 0; r < runs.size(); r++) {
      PipePath path = runs.get(r).path();
      firstReach[r] = next;
      for (int i = 1; i < path.stations(); i++, next++) {
        run[next] = r;
        lengthM[next] = path.distance(i) - path.distance(i - 1);
        riseM[next] = path.elevation(i) - path.elevation(i - 1);
        distanceM[next + 1] = distanceM[next] + lengthM[next];
        elevationM[next + 1] = elevationM[next] + riseM[next];
      }
    }
  }

  int reaches() {
    return run.length;
  }

  /** The run a reach is on. */
  int run(int reach) {
    return run[reach];
  }

  double lengthM(int reach) {
    return lengthM[reach];
  }

  /** In the line's own direction. */
  double riseM(int reach) {
    return riseM[reach];
  }

  double distanceM(int station) {
    return distanceM[station];
  }

  double elevationM(int station) {
    return elevationM[station];
  }

  /** A station as the end of a reach, so that where two runs meet it is on that reach's run. */
  ControlPoint control(int station, int reach) {
    return new ControlPoint(
        run[reach], station - firstReach[run[reach]], distanceM[station], elevationM[station]);
  }
}
