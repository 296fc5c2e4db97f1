package tankyard.app.map.plan;

import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds what lies under a point on the screen. Things lie above lines and lines above outlines, and
 * the corners of what is picked above all, since only they can be dragged there.
 */
public final class HitTester {
  private static final double THING_SLACK_PX = 4;
  private static final double CORNER_PX = 8;
  private static final double LINE_PX = 6;
  private static final double SPOT_PX = 10;

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
    if (!thing.isNothing()) {
      return thing;
    }
    Hit line = line(x, y);
    return line.isNothing() ? outline(x, y) : line;
  }

  private Hit corner(double x, double y, Collection<String> picked) {
    return Stream.<List<? extends Cornered>>of(plan.lines(), plan.outlines())
        .flatMap(List::stream)
        .filter(way -> picked.contains(way.id()) && way.legs() > 0)
        .flatMap(
            way ->
                IntStream.range(0, way.corners())
                    .filter(i -> distancePx(way.corner(i), x, y) <= CORNER_PX)
                    .mapToObj(i -> new Hit(Hit.What.CORNER, way.id(), i)))
        .findFirst()
        .orElse(Hit.NOTHING);
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
    return nearestLeg(plan.lines(), Hit.What.LINE, x, y);
  }

  /** The nearest side of an outline, or an outline that is a single spot. */
  private Hit outline(double x, double y) {
    Hit side = nearestLeg(plan.outlines(), Hit.What.OUTLINE, x, y);
    if (!side.isNothing()) {
      return side;
    }
    return plan.outlines().stream()
        .filter(o -> o.corners() == 1 && distancePx(o.corner(0), x, y) <= SPOT_PX)
        .findFirst()
        .map(o -> new Hit(Hit.What.OUTLINE, o.id(), 0))
        .orElse(Hit.NOTHING);
  }

  private Hit nearestLeg(List<? extends Cornered> ways, Hit.What what, double x, double y) {
    Hit nearest = Hit.NOTHING;
    double least = LINE_PX;
    for (Cornered way : ways) {
      for (int i = 0; i < way.legs(); i++) {
        double distance = distancePx(foot(way, i, x, y), x, y);
        if (distance <= least) {
          least = distance;
          nearest = new Hit(what, way.id(), i);
        }
      }
    }
    return nearest;
  }

  /** The point of a leg that is nearest to a point on the screen. */
  public MapSpot foot(Cornered way, int leg, double x, double y) {
    MapSpot a = way.legStart(leg);
    MapSpot b = way.legEnd(leg);
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

  /** Things whose middle, and lines and outlines whose every spot, lie in a box. */
  public List<String> inside(MapBox box) {
    List<String> found = new java.util.ArrayList<>();
    plan.things().stream().filter(t -> box.contains(t.at())).forEach(t -> found.add(t.id()));
    plan.lines().stream()
        .filter(l -> l.spots().stream().allMatch(box::contains))
        .forEach(l -> found.add(l.id()));
    plan.outlines().stream()
        .filter(o -> o.spots().stream().allMatch(box::contains))
        .forEach(o -> found.add(o.id()));
    return found;
  }

  private double distancePx(MapSpot spot, double x, double y) {
    return Math.hypot(camera.x(spot) - x, camera.y(spot) - y);
  }
}
