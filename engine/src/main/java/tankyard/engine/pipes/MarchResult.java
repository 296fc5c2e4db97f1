package tankyard.engine.pipes;

import java.util.List;
import java.util.Optional;

/**
 * A line marched from its downstream end up to its upstream end.
 *
 * <p>{@code upstreamPascals = (downstream or, with a control point, zero) + staticPascals +
 * frictionPascals}.
 */
public interface MarchResult {
  /** Gauge, at the end the flow comes from. */
  double upstreamPascals();

  /** How much that rises for each m3/s more in the direction of the flow. */
  double upstreamPerFlow();

  /** 1, or 0 where a control point cuts the far end off. */
  double upstreamPerDownstream();

  /** Whether a high point governs. */
  boolean isCut();

  /** The high point that governs, if one does. */
  Optional<ControlPoint> control();

  /** Rise from the upstream end to the control point or the downstream end. */
  double staticPascals();

  /** Friction over the same stretch. */
  double frictionPascals();

  /** The upstream pressure if crests could siphon: the naive answer. */
  double siphonUpstreamPascals();

  /** In the order of the line's own stations, whichever way it flows. */
  List<LinePoint> points();

  /** Stretches at the pressure of the air. */
  List<PartFull> partFull();

  /** One for each run. */
  List<FlowState> flows();

  /** The station under most pressure; the first of two alike. */
  LinePoint highest();
}
