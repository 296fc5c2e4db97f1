package tankyard.engine.network;

/**
 * What lies between two joints: a line, a valve. It says what pressure stands at its upstream end
 * for a flow and a downstream pressure.
 */
public interface Link {

  /**
   * The pressure at the end the flow comes from.
   *
   * @param flow m3/s, positive from the link's start to its end
   * @param downstreamPa gauge pressure at the end the flow goes to: the link's end where the flow
   *     is zero or positive, else its start
   */
  Upstream upstream(double flow, double downstreamPa);

  /** Whether it rises and falls nowhere, so that no crest can cut it. */
  default boolean isLevel() {
    return false;
  }

  /**
   * A pressure with its slopes.
   *
   * @param pressurePa at the upstream end, gauge
   * @param perFlow how it grows with the size of the flow, Pa/(m3/s), not negative
   * @param perDownstream how it follows the downstream pressure: 1, or 0 where a crest between the
   *     two cuts the line in two
   */
  record Upstream(double pressurePa, double perFlow, double perDownstream) {}
}
