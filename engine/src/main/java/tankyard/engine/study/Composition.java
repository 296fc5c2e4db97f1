package tankyard.engine.study;

import java.util.Arrays;
import tankyard.engine.network.Layout;

/** The share of water in every gathering line, mixed at each joint from what flows in. */
final class Composition {
  private final double[] waterCut;

  private Composition(double[] waterCut) {
    this.waterCut = waterCut;
  }

  /** Before any flow is known: the same mixture everywhere. */
  static Composition even(Layout layout, double cut) {
    double[] same = new double[layout.runs().size()];
    Arrays.fill(same, cut);
    return new Composition(same);
  }

  /**
   * Mixes along the flow.
   *
   * @param wells by joint; null where there is none
   * @param before what is kept where a flow goes round, since it then mixes with itself
   */
  static Composition of(Layout layout, WellFlow[] wells, double[] flow, Composition before) {
    return FlowOrder.of(layout, flow)
        .map(order -> mixed(layout, wells, flow, order))
        .orElse(before);
  }

  private static Composition mixed(Layout layout, WellFlow[] wells, double[] flow, int[] order) {
    Composition mixed = new Composition(new double[flow.length]);
    for (int joint : order) {
      mixed.mixAt(joint, layout, wells[joint], flow);
    }
    return mixed;
  }

  private void mixAt(int joint, Layout layout, WellFlow well, double[] flow) {
    double water = well == null ? 0 : well.water();
    double all = well == null ? 0 : well.fluid();
    for (int k = 0; k < layout.degree(joint); k++) {
      int run = layout.runAt(joint, k);
      if (layout.downstream(run, flow[run]) == joint) {
        double size = Math.abs(flow[run]);
        all += size;
        water += size * waterCut[run];
      }
    }
    double cut = all > 0 ? Math.min(1, water / all) : 1;
    for (int k = 0; k < layout.degree(joint); k++) {
      int run = layout.runAt(joint, k);
      if (layout.upstream(run, flow[run]) == joint) {
        waterCut[run] = cut;
      }
    }
  }

  double waterCut(int run) {
    return waterCut[run];
  }

  /** The largest change of any line's share. */
  double differsFrom(Composition other) {
    double most = 0;
    for (int i = 0; i < waterCut.length; i++) {
      most = Math.max(most, Math.abs(waterCut[i] - other.waterCut[i]));
    }
    return most;
  }
}
