package tankyard.engine.network;

import static org.assertj.core.api.Assertions.assertThat;

/** Whether a network balances in mass and energy. */
final class Balance {
  private Balance() {}

  /** Added up here once more, not taken from the solver's own audit. */
  static void require(String what, Network network, Solved solved) {
    Layout layout = network.layout();
    double[] left = new double[layout.joints().size()];
    double throughput = 0;
    for (int j = 0; j < left.length; j++) {
      left[j] = network.inflow(j);
      throughput += network.inflow(j);
    }
    for (int i = 0; i < layout.runs().size(); i++) {
      double q = solved.flow(i);
      left[layout.from(i)] -= q;
      left[layout.to(i)] += q;
      assertThat(misfitPa(network.link(i), solved, i))
          .as("%s, energy along %s", what, layout.runs().get(i).run())
          .isLessThan(0.01);
    }
    for (int j = 0; j < left.length; j++) {
      if (!layout.isHeld(j)) {
        assertThat(Math.abs(left[j]))
            .as("%s, mass at %s", what, layout.joints().get(j))
            .isLessThanOrEqualTo(1e-8 * throughput);
      }
    }
  }

  private static double misfitPa(Link link, Solved solved, int run) {
    Layout layout = solved.layout();
    double q = solved.flow(run);
    double up = solved.pressurePa(layout.upstream(run, q));
    double down = solved.pressurePa(layout.downstream(run, q));
    if (q == 0) {
      // At rest: neither end's pressure would set it going.
      double ahead = up - link.upstream(0, down).pressurePa();
      return Math.max(0, Math.max(ahead, down - link.upstream(-1e-18, up).pressurePa()));
    }
    Link.Upstream law = link.upstream(q, down);
    double misfit = Math.abs(law.pressurePa() - up);
    return law.perDownstream() == 0 && up < law.pressurePa()
        ? Math.min(misfit, Math.abs(seepedPa(link, q, down) - up))
        : misfit;
  }

  /** In a loop a crest may hold: then a litre a day passes for each bar across it. */
  private static double seepedPa(Link link, double q, double down) {
    double full = link.upstream(0, 1e8).pressurePa() - 1e8;
    return down + (q > 0 ? full : -full) + Math.abs(q) * 1e5 * 86400 * 1000;
  }
}
