package tankyard.app.map.plan;

import java.util.Collection;
import java.util.List;

/**
 * Finds what lies under a point on the screen. Things lie above lines, and the corners of a picked
 * line above both, since only they can be dragged there.
 */
public final class HitTester {
  private static final double THING_SLACK_PX = 4;
  private static final double CORNER_PX = 8;
  private static final double LINE_PX = 6;

  private final Plan plan;
  private final Camera camera;

  public HitTester(Plan plan, Camera camera) {
    this.plan = plan;
    this.camera = camera;
  }

  public Hit at(double x, double y, Collection<String> picked) {
    Hit corner = corner(x, y, picked);
    if (!corner.isNothing()) {
      return corner;
    }
    Hit thing = thing(x, y);
    return thing.isNothing() ? line(x, y) : thing;
  }

  private Hit corner(double x, double y, Collection<String> picked) {
    for (PlanLine line : plan.lines()) {
      if (picked.contains(line.id())) {
        for (int i = 0; i < line.corners(); i++) {
          if (distancePx(line.corner(i), x, y) <= CORNER_PX) {
            return new Hit(Hit.What.CORNER, line.id(), i);
          }
        }
      }
    }
    return Hit.NOTHING;
  }

  /** The nearest thing whose outline or symbol is under the point. */
  public Hit thing(double x, double y) {
    Hit nearest = Hit.NOTHING;
    double least = Double.MAX_VALUE;
    for (PlanThing thing : plan.things()) {
      SymbolSize size = SymbolSize.of(thing, camera);
      double dx = Math.abs(camera.x(thing.at()) - x);
      double dy = Math.abs(camera.y(thing.at()) - y);
      boolean inside =
          dx <= size.widthPx() / 2 + THING_SLACK_PX && dy <= size.heightPx() / 2 + THING_SLACK_PX;
      if (inside && Math.hypot(dx, dy) < least) {
        least = Math.hypot(dx, dy);
        nearest = new Hit(Hit.What.THING, thing.id(), 0);
      }
    }
    return nearest;
  }

  /** The nearest line, with the leg that is under the point. */
  public Hit line(double x, double y) {
    Hit nearest = Hit.NOTHING;
    double least = LINE_PX;
    for (PlanLine line : plan.lines()) {
      for (int i = 0; i < line.legs(); i++) {
        double distance = distancePx(foot(line, i, x, y), x, y);
        if (distance <= least) {
          least = distance;
          nearest = new Hit(Hit.What.LINE, line.id(), i);
        }
      }
    }
    return nearest;
  }

  /** The point of a leg that is nearest to a point on the screen. */
  public MapSpot foot(PlanLine line, int leg, double x, double y) {
    MapSpot a = line.spots().get(leg);
    MapSpot b = line.spots().get(leg + 1);
    MapSpot p = camera.spot(x, y);
    double east = b.eastM() - a.eastM();
    double north = b.northM() - a.northM();
    double length2 = east * east + north * north;
    if (length2 == 0) {
      return a;
    }
    double share = ((p.eastM() - a.eastM()) * east + (p.northM() - a.northM()) * north) / length2;
    return a.towards(b, Math.max(0, Math.min(1, share)));
  }

  /** Things whose middle, and lines whose every spot, lie in a box. */
  public List<String> inside(MapBox box) {
    List<String> found = new java.util.ArrayList<>();
    plan.things().stream().filter(t -> box.contains(t.at())).forEach(t -> found.add(t.id()));
    plan.lines().stream()
        .filter(l -> l.spots().stream().allMatch(box::contains))
        .forEach(l -> found.add(l.id()));
    return found;
  }

  private double distancePx(MapSpot spot, double x, double y) {
    return Math.hypot(camera.x(spot) - x, camera.y(spot) - y);
  }
}
