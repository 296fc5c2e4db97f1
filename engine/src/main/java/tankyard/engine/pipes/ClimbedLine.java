package tankyard.engine.pipes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A line full of liquid that was walked up from its downstream end. */
final class ClimbedLine implements MarchResult {
  private final Climb walk;

  /** Of a walk that came to its end. */
  ClimbedLine(Climb walk) {
    this.walk = walk;
  }

  @Override
  public double upstreamPascals() {
    return walk.pressure(walk.start());
  }

  @Override
  public double upstreamPerFlow() {
    return walk.slope();
  }

  @Override
  public double upstreamPerDownstream() {
    return walk.isCut() ? 0 : 1;
  }

  @Override
  public boolean isCut() {
    return walk.isCut();
  }

  @Override
  public Optional<ControlPoint> control() {
    return walk.isCut() ? Optional.of(walk.control()) : Optional.empty();
  }

  @Override
  public double staticPascals() {
    return walk.gatheredStatic();
  }

  @Override
  public double frictionPascals() {
    return walk.gatheredFriction();
  }

  @Override
  public double siphonUpstreamPascals() {
    return walk.siphon(walk.start());
  }

  @Override
  public List<LinePoint> points() {
    List<LinePoint> points = new ArrayList<>(stations());
    for (int station = 0; station < stations(); station++) {
      points.add(point(station));
    }
    return points;
  }

  @Override
  public List<PartFull> partFull() {
    return List.copyOf(walk.partFull());
  }

  @Override
  public List<FlowState> flows() {
    return walk.line().states();
  }

  @Override
  public LinePoint highest() {
    int highest = 0;
    for (int station = 1; station < stations(); station++) {
      if (walk.pressure(station) > walk.pressure(highest)) {
        highest = station;
      }
    }
    return point(highest);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ClimbedLine march
        && control().equals(march.control())
        && Double.compare(upstreamPerFlow(), march.upstreamPerFlow()) == 0
        && Double.compare(staticPascals(), march.staticPascals()) == 0
        && Double.compare(frictionPascals(), march.frictionPascals()) == 0
        && points().equals(march.points())
        && partFull().equals(march.partFull())
        && flows().equals(march.flows());
  }

  @Override
  public int hashCode() {
    return points().hashCode();
  }

  private int stations() {
    return walk.line().stations().reaches() + 1;
  }

  private LinePoint point(int station) {
    Stations at = walk.line().stations();
    return new LinePoint(
        at.distanceM(station),
        at.elevationM(station),
        walk.pressure(station),
        walk.siphon(station));
  }
}
