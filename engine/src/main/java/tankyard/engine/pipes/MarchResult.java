package tankyard.engine.pipes;

import java.util.List;
import java.util.Optional;

/**
 * A line marched from its downstream end up to its upstream end.
 *
 * <p>{@code upstreamPascals = (downstream or, with a control point, zero) + staticPascals +
 * frictionPascals}.
 *
 * @param upstreamPascals gauge, at the end the flow comes from
 * @param upstreamPerFlow how much that rises for each m3/s more in the direction of the flow
 * @param upstreamPerDownstream 1, or 0 where a control point cuts the far end off
 * @param control the high point that governs, if one does
 * @param staticPascals rise from the upstream end to the control point or the downstream end
 * @param frictionPascals over the same stretch
 * @param siphonUpstreamPascals the upstream pressure if crests could siphon: the naive answer
 * @param points in the order of the line's own stations, whichever way it flows
 * @param flows one for each run
 */
public record MarchResult(
    double upstreamPascals,
    double upstreamPerFlow,
    double upstreamPerDownstream,
    Optional<ControlPoint> control,
    double staticPascals,
    double frictionPascals,
    double siphonUpstreamPascals,
    List<LinePoint> points,
    List<PartFull> partFull,
    List<FlowState> flows) {
  public MarchResult {
    points = List.copyOf(points);
    partFull = List.copyOf(partFull);
    flows = List.copyOf(flows);
  }

  /** The station under most pressure. */
  public LinePoint highest() {
    return points.stream()
        .reduce((a, b) -> b.gaugePascals() > a.gaugePascals() ? b : a)
        .orElseThrow();
  }
}
