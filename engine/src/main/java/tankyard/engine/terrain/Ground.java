package tankyard.engine.terrain;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

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
      for (double share : bends(from, to, length)) {
        if (share < 1 || i + 2 == route.size()) {
          stations.add(station(from, to, share, walked + share * length));
        }
      }
      walked += length;
    }
    return stations;
  }

  private Station station(RouteSpot from, RouteSpot to, double share, double distanceM) {
    double east = from.eastM() + share * (to.eastM() - from.eastM());
    double north = from.northM() + share * (to.northM() - from.northM());
    return new Station(distanceM, east, north, heightAt(east, north).orElseThrow());
  }

  /** Shares of the way from one corner to the next at which the ground may bend, in order. */
  private TreeSet<Double> bends(RouteSpot from, RouteSpot to, double length) {
    TreeSet<Double> shares = new TreeSet<>(List.of(0.0, 1.0));
    if (length <= SAME_PLACE_M) {
      return shares;
    }
    Coordinate a = new Coordinate(from.eastM(), from.northM());
    Coordinate b = new Coordinate(to.eastM(), to.northM());
    for (Spot spot : spots) {
      double share = shareAlong(a, b, spot);
      if (share > 0 && share < 1) {
        shares.add(share);
      }
    }
    Envelope box = new Envelope(a, b);
    for (Coordinate crossing : triangles.crossings(a, b, box)) {
      double share = a.distance(crossing) / length;
      boolean apart = shares.stream().noneMatch(s -> Math.abs(s - share) * length < SAME_PLACE_M);
      if (share > 0 && share < 1 && apart) {
        shares.add(share);
      }
    }
    return shares;
  }

  /** How far along the stretch a known height lies on it, or -1 where it lies beside. */
  private static double shareAlong(Coordinate a, Coordinate b, Spot spot) {
    double dx = b.x - a.x;
    double dy = b.y - a.y;
    double length2 = dx * dx + dy * dy;
    double share = ((spot.eastM() - a.x) * dx + (spot.northM() - a.y) * dy) / length2;
    return near(spot, a.x + share * dx, a.y + share * dy) ? share : -1;
  }

  private static boolean near(Spot spot, double eastM, double northM) {
    return Math.abs(spot.eastM() - eastM) < SAME_PLACE_M
        && Math.abs(spot.northM() - northM) < SAME_PLACE_M;
  }
}
