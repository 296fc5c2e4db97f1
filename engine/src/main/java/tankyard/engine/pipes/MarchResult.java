package tankyard.engine.pipes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A line marched from its downstream end up to its upstream end.
 *
 * <p>{@code upstreamPascals = (downstream or, with a control point, zero) + staticPascals +
 * frictionPascals}.
 */
public final class MarchResult {
  private final Climb walk;

  /** Of a walk that came to its end. */
  MarchResult(Climb walk) {
    this.walk = walk;
  }

  /** Gauge, at the end the flow comes from. */
  public double upstreamPascals() {
    return walk.pressure(walk.start());
  }

  /** How much that rises for each m3/s more in the direction of the flow. */
  public double upstreamPerFlow() {
    return walk.slope();
  }

  /** 1, or 0 where a control point cuts the far end off. */
  public double upstreamPerDownstream() {
    return walk.isCut() ? 0 : 1;
  }

  /** Whether a high point governs. */
  public boolean isCut() {
    return walk.isCut();
  }

  /** The high point that governs, if one does. */
  public Optional<ControlPoint> control() {
    return walk.isCut() ? Optional.of(walk.control()) : Optional.empty();
  }

  /** Rise from the upstream end to the control point or the downstream end. */
  public double staticPascals() {
    return walk.gatheredStatic();
  }

  /** Friction over the same stretch. */
  public double frictionPascals() {
    return walk.gatheredFriction();
  }

  /** The upstream pressure if crests could siphon: the naive answer. */
  public double siphonUpstreamPascals() {
    return walk.siphon(walk.start());
  }

  /** In the order of the line's own stations, whichever way it flows. */
  public List<LinePoint> points() {
    List<LinePoint> points = new ArrayList<>(stations());
    for (int station = 0; station < stations(); station++) {
      points.add(point(station));
    }
    return points;
  }

  /** Stretches at the pressure of the air. */
  public List<PartFull> partFull() {
    return List.copyOf(walk.partFull());
  }

  /** One for each run. */
  public List<FlowState> flows() {
    return walk.line().states();
  }

  /** The station under most pressure; the first of two alike. */
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
    return other instanceof MarchResult march
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
