package tankyard.engine.network;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;

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
      double below = solved.pressurePa(layout.downstream(i, q));
      double law = network.link(i).upstream(q, below).pressurePa();
      assertThat(law)
          .as("%s, energy along %s", what, layout.runs().get(i).run())
          .isCloseTo(solved.pressurePa(layout.upstream(i, q)), Offset.offset(0.01));
    }
    for (int j = 0; j < left.length; j++) {
      if (!layout.isHeld(j)) {
        assertThat(Math.abs(left[j]))
            .as("%s, mass at %s", what, layout.joints().get(j))
            .isLessThanOrEqualTo(1e-8 * throughput);
      }
    }
  }
}
