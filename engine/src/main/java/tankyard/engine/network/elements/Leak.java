package tankyard.engine.network.elements;

import tankyard.engine.network.Link.Upstream;

/**
 * What passes a seat that is shut: a litre a day for each bar across it (a choice of this program,
 * no source), in proportion. Nothing at all would leave the pressure behind a shut seat open.
 */
final class Leak {
  /** Pa/(m3/s). */
  static final double RESISTANCE = 1e5 * 1000 * 86400;

  private Leak() {}

  /** Ahead of a shut seat. */
  static Upstream past(double flow, double downstreamPa) {
    return new Upstream(downstreamPa + RESISTANCE * Math.abs(flow), RESISTANCE, 1);
  }

  /**
   * Ahead of a seat that opens at a pressure: shut as long as the leak needs less.
   *
   * @param open what stands ahead of it once it is open
   */
  static Upstream until(Upstream open, double flow, double downstreamPa) {
    Upstream shut = past(flow, downstreamPa);
    return shut.pressurePa() < open.pressurePa() ? shut : open;
  }
}
