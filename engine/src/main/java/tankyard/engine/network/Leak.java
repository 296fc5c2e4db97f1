package tankyard.engine.network;

import tankyard.engine.network.Link.Upstream;

/**
 * What passes a seat that is shut or a crest that holds: a litre a day for each bar across it (a
 * choice of this program, no source), in proportion. Nothing at all would leave the pressure behind
 * it open.
 */
public final class Leak {
  /** Pa/(m3/s). */
  public static final double RESISTANCE = 1e5 * 1000 * 86400;

  private Leak() {}

  /** Ahead of a shut seat. */
  public static Upstream past(double flow, double downstreamPa) {
    return past(flow, downstreamPa, RESISTANCE);
  }

  private static Upstream past(double flow, double downstreamPa, double resistance) {
    return new Upstream(downstreamPa + resistance * Math.abs(flow), resistance, 1);
  }

  /**
   * Ahead of a seat that opens at a pressure: shut as long as the leak needs less.
   *
   * @param open what stands ahead of it once it is open
   */
  public static Upstream until(Upstream open, double flow, double downstreamPa) {
    return until(open, flow, downstreamPa, RESISTANCE);
  }

  /** The same for what lets as much pass as that resistance does, Pa/(m3/s). */
  static Upstream until(Upstream open, double flow, double downstreamPa, double resistance) {
    Upstream shut = past(flow, downstreamPa, resistance);
    return shut.pressurePa() < open.pressurePa() ? shut : open;
  }
}
