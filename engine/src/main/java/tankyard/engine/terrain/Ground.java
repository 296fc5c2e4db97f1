package tankyard.engine.terrain;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * The lie of the land from known heights: flat triangles between them.
 *
 * <p>Inside the outline of the known heights the ground is the triangle's plane (Delaunay
 * triangulation by the JTS library). Outside it the nearest point of the outline holds: the ground
 * is taken to go on level. Known heights that all lie on one line, or fewer than three, make no
 * triangles; then the nearest point of that line holds.
 */
public final class Ground {
  /** Two heights nearer than this are one place; the first one counts. */
  private static final double SAME_PLACE_M = 0.05;

  private final List<Spot> spots;
  private final Triangles triangles;

  private Ground(List<Spot> spots) {
    this.spots = spots;
    this.triangles = Triangles.of(spots);
  }

  public static Ground of(List<Spot> known) {
    List<Spot> apart = new ArrayList<>();
    for (Spot spot : known) {
      if (apart.stream().noneMatch(s -> near(s, spot.eastM(), spot.northM()))) {
        apart.add(spot);
      }
    }
    return new Ground(List.copyOf(apart));
  }

  /** The heights it was made of, one for each place. */
  public List<Spot> spots() {
    return spots;
  }

  /** The flat triangles between the known heights, three corners each, for drawing. */
  public List<List<Spot>> facets() {
    return triangles.facets();
  }

  /** Elevation of the ground, in metres; empty where no height at all is known. */
  public OptionalDouble heightAt(double eastM, double northM) {
    for (Spot spot : spots) {
      if (near(spot, eastM, northM)) {
        return OptionalDouble.of(spot.groundM());
      }
    }
    return triangles.heightAt(eastM, northM);
  }

  /**
   * Every point along a route where the ground bends: its corners, the known heights on it and
   * where it crosses the edges of the triangles. Between two stations the ground is straight.
   *
   * @return stations in order, or an empty list where no height at all is known
   */
  public List<Station> along(List<RouteSpot> route) {
    if (spots.isEmpty()) {
      return List.of();
    }
    List<Station> stations = new ArrayList<>();
    double walked = 0;
    for (int i = 0; i + 1 < route.size(); i++) {
      RouteSpot from = route.get(i);
      RouteSpot to = route.get(i + 1);
      double length = Math.hypot(to.eastM() - from.eastM(), to.northM() - from.northM());
      boolean lastStretch = i + 2 == route.size();
      for (Map.Entry<Double, Double> bend : bends(from, to, length).entrySet()) {
        double share = bend.getKey();
        if (share < 1 || lastStretch) {
          stations.add(station(from, to, share, walked + share * length, bend.getValue()));
        }
      }
      walked += length;
    }
    return stations;
  }

  private static Station station(
      RouteSpot from, RouteSpot to, double share, double distanceM, double groundM) {
    double east = from.eastM() + share * (to.eastM() - from.eastM());
    double north = from.northM() + share * (to.northM() - from.northM());
    return new Station(distanceM, east, north, groundM);
  }

  /**
   * The ground's elevation by the shares of the way from one corner to the next at which it may
   * bend.
   */
  private NavigableMap<Double, Double> bends(RouteSpot from, RouteSpot to, double length) {
    NavigableMap<Double, Double> bends = new TreeMap<>();
    bends.put(0.0, heightAt(from.eastM(), from.northM()).orElseThrow());
    bends.put(1.0, heightAt(to.eastM(), to.northM()).orElseThrow());
    if (length <= SAME_PLACE_M) {
      return bends;
    }
    for (Spot spot : spots) {
      double share = shareAlong(from, to, spot);
      if (share > 0 && share < 1) {
        bends.put(share, spot.groundM());
      }
    }
    for (Edge.Crossing crossing : triangles.crossings(from, to)) {
      if (isApart(crossing.share(), bends, SAME_PLACE_M / length)) {
        bends.put(crossing.share(), crossing.groundM());
      }
    }
    return bends;
  }

  private static boolean isApart(double share, NavigableMap<Double, Double> bends, double least) {
    return share - bends.floorKey(share) >= least && bends.ceilingKey(share) - share >= least;
  }

  /** How far along the stretch a known height lies on it, or -1 where it lies beside. */
  private static double shareAlong(RouteSpot from, RouteSpot to, Spot spot) {
    double east = to.eastM() - from.eastM();
    double north = to.northM() - from.northM();
    double spotEast = spot.eastM() - from.eastM();
    double spotNorth = spot.northM() - from.northM();
    double length2 = east * east + north * north;
    double beside = east * spotNorth - north * spotEast;
    // Farther beside the stretch than a corner of the square that counts as one place.
    if (beside * beside > 2 * SAME_PLACE_M * SAME_PLACE_M * length2) {
      return -1;
    }
    double share = (spotEast * east + spotNorth * north) / length2;
    return near(spot, from.eastM() + share * east, from.northM() + share * north) ? share : -1;
  }

  private static boolean near(Spot spot, double eastM, double northM) {
    return Math.abs(spot.eastM() - eastM) < SAME_PLACE_M
        && Math.abs(spot.northM() - northM) < SAME_PLACE_M;
  }
}
