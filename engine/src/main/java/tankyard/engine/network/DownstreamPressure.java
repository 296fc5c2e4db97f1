package tankyard.engine.network;

/**
 * The pressure at the far end of a link for a given upstream pressure. A link states the pressure
 * upstream of it; where the flow runs outwards from a held joint that must be turned round.
 */
final class DownstreamPressure {
  private static final int ROUNDS = 60;
  private static final double CLOSE_PA = 1e-6;
  private static final double STEP_PA = 1e5;

  private DownstreamPressure() {}

  static double of(Link link, double flow, double upstreamPa) {
    double guess = upstreamPa;
    for (int i = 0; i < ROUNDS; i++) {
      Link.Upstream at = link.upstream(flow, guess);
      double gap = at.pressurePa() - upstreamPa;
      if (Math.abs(gap) < CLOSE_PA) {
        return guess;
      }
      if (at.perDownstream() != 0) {
        guess -= gap / at.perDownstream();
      } else if (gap < 0) {
        // What was tried is too little to fill a far end that lies low.
        guess = 2 * Math.max(0, guess) - gap + STEP_PA;
      } else {
        // A crest cuts the link: below the crest's own pressure the far end stands at none.
        return 0;
      }
    }
    return guess;
  }
}
