package tankyard.engine.study;

import java.util.List;
import java.util.Optional;
import tankyard.engine.terrain.Station;

/**
 * The trench of one line: the ground along it, how deep the pipe lies and how much pipe it takes.
 *
 * @param stations where the ground bends
 * @param depths at corners, straight between them
 * @param slack pipe over length on the ground
 * @param typedM length of pipe, where it was measured
 */
record Trench(List<Station> stations, List<Depth> depths, double slack, Optional<Double> typedM) {

  /** How deep the pipe lies at a distance along the map. */
  record Depth(double mapM, double depthM) {}

  double mapM() {
    return stations.get(stations.size() - 1).distanceM();
  }

  /** Pipe from one end of the trench to the other. */
  double lengthM() {
    return typedM.orElseGet(this::overGroundM);
  }

  private double overGroundM() {
    double sum = 0;
    for (int i = 1; i < stations.size(); i++) {
      sum += overGroundM(i);
    }
    return sum;
  }

  /** Pipe between a station and the one before it. */
  double pieceM(int station) {
    double over = overGroundM(station);
    double all = overGroundM();
    return typedM.isPresent() && all > 0 ? typedM.get() * over / all : over;
  }

  private double overGroundM(int i) {
    double along = stations.get(i).distanceM() - stations.get(i - 1).distanceM();
    double up = stations.get(i).groundM() - stations.get(i - 1).groundM();
    return Math.hypot(along, up) * slack;
  }

  double depthM(double mapM) {
    for (int i = 1; i < depths.size(); i++) {
      Depth a = depths.get(i - 1);
      Depth b = depths.get(i);
      if (mapM <= b.mapM() || i == depths.size() - 1) {
        double span = b.mapM() - a.mapM();
        double share = span > 0 ? Math.min(1, Math.max(0, (mapM - a.mapM()) / span)) : 1;
        return a.depthM() + share * (b.depthM() - a.depthM());
      }
    }
    return depths.get(0).depthM();
  }
}
