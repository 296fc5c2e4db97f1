package tankyard.engine.terrain;

import java.util.Optional;

/** A straight edge between two known heights. */
record Edge(Spot a, Spot b) {
  /**
   * Where a straight stretch crosses an edge.
   *
   * @param share of the way from the stretch's start to its end
   */
  record Crossing(double share, double groundM) {}

  /** Where a stretch crosses it between its ends; nothing where the two run side by side. */
  Optional<Crossing> crossing(RouteSpot from, RouteSpot to) {
    double east = to.eastM() - from.eastM();
    double north = to.northM() - from.northM();
    double sideA = side(east, north, from, a);
    double sideB = side(east, north, from, b);
    if (sideA * sideB > 0 || sideA == sideB) {
      return Optional.empty();
    }
    double onEdge = sideA / (sideA - sideB);
    double atEast = a.eastM() + onEdge * (b.eastM() - a.eastM()) - from.eastM();
    double atNorth = a.northM() + onEdge * (b.northM() - a.northM()) - from.northM();
    double share = (atEast * east + atNorth * north) / (east * east + north * north);
    return share > 0 && share < 1
        ? Optional.of(new Crossing(share, height(onEdge)))
        : Optional.empty();
  }

  /** Positive on the left of the stretch, in square metres. */
  private static double side(double east, double north, RouteSpot from, Spot spot) {
    return east * (spot.northM() - from.northM()) - north * (spot.eastM() - from.eastM());
  }

  /** Square of the distance from a place to the nearest point of the edge. */
  double distance2(double eastM, double northM) {
    double share = nearestShare(eastM, northM);
    double east = a.eastM() + share * (b.eastM() - a.eastM()) - eastM;
    double north = a.northM() + share * (b.northM() - a.northM()) - northM;
    return east * east + north * north;
  }

  /** Elevation at its point nearest to a place. */
  double heightNearest(double eastM, double northM) {
    return height(nearestShare(eastM, northM));
  }

  private double height(double share) {
    return a.groundM() + share * (b.groundM() - a.groundM());
  }

  private double nearestShare(double eastM, double northM) {
    double east = b.eastM() - a.eastM();
    double north = b.northM() - a.northM();
    double along = (eastM - a.eastM()) * east + (northM - a.northM()) * north;
    return Math.max(0, Math.min(1, along / (east * east + north * north)));
  }
}
