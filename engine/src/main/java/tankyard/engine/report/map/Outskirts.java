package tankyard.engine.report.map;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tankyard.engine.terrain.Spot;

/**
 * The ground outside the outline of the known heights. The study takes it to go on level from the
 * nearest point of the outline; these triangles say the same: a strip outwards from each edge, and
 * a fan at each corner between two strips.
 */
final class Outskirts {
  /** How far they reach, in metres: past any page. */
  private static final double REACH_M = 30_000;

  private final Map<Spot, List<Spot>> farOf = new LinkedHashMap<>();
  private final List<List<Spot>> triangles = new ArrayList<>();

  private Outskirts() {}

  /** Triangles around these. */
  static List<List<Spot>> of(List<List<Spot>> facets) {
    Outskirts outskirts = new Outskirts();
    for (List<Spot> facet : facets) {
      for (int i = 0; i < 3; i++) {
        Spot a = facet.get(i);
        Spot b = facet.get((i + 1) % 3);
        if (isOutline(facets, facet, a, b)) {
          outskirts.strip(a, b, facet.get((i + 2) % 3));
        }
      }
    }
    outskirts.farOf.forEach(outskirts::fan);
    return outskirts.triangles;
  }

  private static boolean isOutline(List<List<Spot>> facets, List<Spot> mine, Spot a, Spot b) {
    return facets.stream().noneMatch(f -> f != mine && f.contains(a) && f.contains(b));
  }

  private void strip(Spot a, Spot b, Spot inside) {
    double dx = b.eastM() - a.eastM();
    double dy = b.northM() - a.northM();
    double length = Math.hypot(dx, dy);
    double toInside = dx * (inside.northM() - a.northM()) - dy * (inside.eastM() - a.eastM());
    double side = toInside > 0 ? REACH_M / length : -REACH_M / length;
    Spot farA = moved(a, dy * side, -dx * side);
    Spot farB = moved(b, dy * side, -dx * side);
    triangles.add(List.of(a, b, farB));
    triangles.add(List.of(a, farB, farA));
    farOf.computeIfAbsent(a, k -> new ArrayList<>()).add(farA);
    farOf.computeIfAbsent(b, k -> new ArrayList<>()).add(farB);
  }

  private void fan(Spot corner, List<Spot> far) {
    if (far.size() == 2) {
      triangles.add(List.of(corner, far.get(0), far.get(1)));
    }
  }

  private static Spot moved(Spot spot, double eastM, double northM) {
    return new Spot(spot.eastM() + eastM, spot.northM() + northM, spot.groundM());
  }
}
