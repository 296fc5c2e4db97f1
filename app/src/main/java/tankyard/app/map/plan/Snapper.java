package tankyard.app.map.plan;

import java.util.Optional;
import tankyard.engine.units.Unit;

/**
 * Draws the pointer to things, to lines and to round numbers of feet or metres, so that a place
 * reads 1,240 ft and not 1,239.87 ft. The step goes with the zoom: nobody aims finer than a few
 * pixels.
 */
public final class Snapper {
  private static final double LINE_STEP_PX = 4;
  private static final double[] STEPS = {0.1, 0.5, 1, 2, 5, 10, 50, 100};

  private final Plan plan;
  private final Camera camera;
  private final Unit unit;

  /**
   * A snapper for what is on the screen.
   *
   * @param unit of length in which places come out round
   */
  public Snapper(Plan plan, Camera camera, Unit unit) {
    this.plan = plan;
    this.camera = camera;
    this.unit = unit;
  }

  /** Lands on a thing, else on a line, else on a round place. */
  public Snap toThingsAndLines(double x, double y) {
    Snap thing = toThings(x, y);
    if (!thing.isFree()) {
      return thing;
    }
    HitTester tester = new HitTester(plan, camera);
    Hit hit = tester.line(x, y);
    if (hit.isNothing()) {
      return thing;
    }
    PlanLine line = plan.line(hit.id()).orElseThrow();
    return new Snap(
        tester.foot(line, hit.index(), x, y),
        Optional.empty(),
        Optional.of(new Snap.OnLine(hit.id(), hit.index())));
  }

  /** Lands on a thing, else on a round place. */
  public Snap toThings(double x, double y) {
    Hit hit = new HitTester(plan, camera).thing(x, y);
    if (hit.isNothing()) {
      return new Snap(round(camera.spot(x, y)), Optional.empty(), Optional.empty());
    }
    MapSpot at = plan.thing(hit.id()).orElseThrow().at();
    return new Snap(at, Optional.of(hit.id()), Optional.empty());
  }

  public MapSpot round(MapSpot spot) {
    double step = stepM();
    return new MapSpot(
        Math.rint(spot.eastM() / step) * step, Math.rint(spot.northM() / step) * step);
  }

  /** The round step in metres at this zoom. */
  public double stepM() {
    double unitM = unit.toSi(1);
    for (double step : STEPS) {
      if (camera.px(step * unitM) >= LINE_STEP_PX) {
        return step * unitM;
      }
    }
    return STEPS[STEPS.length - 1] * unitM;
  }

  /** Turns the way from a corner to the nearest of eight compass points, keeping its reach. */
  public static MapSpot straightened(MapSpot from, MapSpot to) {
    double east = to.eastM() - from.eastM();
    double north = to.northM() - from.northM();
    double eighth = Math.PI / 4;
    double angle = Math.rint(Math.atan2(north, east) / eighth) * eighth;
    double reach = east * Math.cos(angle) + north * Math.sin(angle);
    return from.plus(reach * Math.cos(angle), reach * Math.sin(angle));
  }
}
