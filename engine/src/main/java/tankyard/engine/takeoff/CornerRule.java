package tankyard.engine.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.catalog.Fitting;
import tankyard.engine.catalog.Material;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Thing;

/** Elbows at the corners of a route. */
final class CornerRule implements TakeoffRule {
  /** Pipe bends this far of itself over the length of a trench corner, degrees. */
  private static final double BENDS_ITSELF = 22.5;

  private static final double RATHER_A_RIGHT_ANGLE = 67.5;

  @Override
  public String words() {
    return "An elbow at every corner of more than 22.5 degrees, but none on polyethylene, which is"
        + " laid in a bow";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    for (Line line : drawing.lines()) {
      Material material = drawing.material(line);
      if (material == Material.POLYETHYLENE || material == Material.OTHER) {
        continue;
      }
      for (double turn : turns(drawing, line)) {
        if (turn > BENDS_ITSELF) {
          Fitting.Part part =
              turn > RATHER_A_RIGHT_ANGLE ? Fitting.Part.ELBOW_90 : Fitting.Part.ELBOW_45;
          Ware elbow = drawing.stock().fitting(part, material, drawing.size(line));
          tally.add(kind(line), elbow, 1, line.status(), line.id());
        }
      }
    }
  }

  private static TakeoffKind kind(Line line) {
    return line.service() == Service.OVERFLOW
        ? TakeoffKind.OVERFLOW_FITTINGS
        : TakeoffKind.FITTINGS;
  }

  /** How far the route turns at each of its corners, degrees. */
  private static List<Double> turns(Drawing drawing, Line line) {
    List<MapPoint> way = new ArrayList<>();
    Optional<MapPoint> from = drawing.lease().thing(line.from()).map(Thing::at);
    Optional<MapPoint> to = drawing.lease().thing(line.to()).map(Thing::at);
    from.ifPresent(way::add);
    line.route().stream().map(RoutePoint::at).forEach(way::add);
    to.ifPresent(way::add);
    List<Double> turns = new ArrayList<>();
    for (int i = 1; i + 1 < way.size(); i++) {
      turns.add(turn(way.get(i - 1), way.get(i), way.get(i + 1)));
    }
    return turns;
  }

  private static double turn(MapPoint before, MapPoint at, MapPoint after) {
    double in = heading(before, at);
    double out = heading(at, after);
    double degrees = Math.abs(Math.toDegrees(out - in)) % 360;
    return degrees > 180 ? 360 - degrees : degrees;
  }

  private static double heading(MapPoint from, MapPoint to) {
    return Math.atan2(
        to.north().metres() - from.north().metres(), to.east().metres() - from.east().metres());
  }
}
