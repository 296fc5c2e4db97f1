package tankyard.engine.network;

/**
 * A run in a loop with a crest that its flow may not get over: the others carry it round. What
 * stands behind the crest is then any pressure short of the crest's, and the law alone would leave
 * it open. So a crest that holds lets a litre a day pass for each bar across it, as a seat that is
 * shut does (a choice of this program, no source); where that would take more pressure than the
 * crest, it is flowed over.
 *
 * @param stillPa how much more stands at the run's start than at its end when it is full and at
 *     rest
 * @param resistance to what passes, Pa/(m3/s)
 */
record Blocked(Link link, double stillPa, double resistance) implements Link {
  /** So much that no crest cuts a run. */
  private static final double FULL_PA = 1e8;

  static Blocked of(Link link) {
    return new Blocked(link, link.upstream(0, FULL_PA).pressurePa() - FULL_PA, Leak.RESISTANCE);
  }

  /** The same, holding so hard. */
  Blocked holding(double asHard) {
    return new Blocked(link, stillPa, asHard);
  }

  @Override
  public Upstream upstream(double flow, double downstreamPa) {
    Upstream open = link.upstream(flow, downstreamPa);
    if (open.perDownstream() != 0) {
      return open;
    }
    double rise = flow >= 0 ? stillPa : -stillPa;
    return Leak.until(open, flow, downstreamPa + rise, resistance);
  }
}
