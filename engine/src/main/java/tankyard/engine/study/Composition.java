package tankyard.engine.study;

import java.util.Arrays;
import tankyard.engine.network.Layout;

/**
 * The share of water in every gathering line and the gas that comes with it, mixed at each joint
 * from what flows in.
 */
final class Composition {
  private final double[] waterCut;

  /** Standard m3 of gas with each m3 of liquid. */
  private final double[] gasPerLiquid;

  private Composition(int lines) {
    waterCut = new double[lines];
    gasPerLiquid = new double[lines];
  }

  /** Before any flow is known: the same mixture everywhere. */
  static Composition even(Layout layout, double cut, double gas) {
    Composition same = new Composition(layout.runs().size());
    Arrays.fill(same.waterCut, cut);
    Arrays.fill(same.gasPerLiquid, gas);
    return same;
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
    Composition mixed = new Composition(flow.length);
    for (int joint : order) {
      mixed.mixAt(joint, layout, wells[joint], flow);
    }
    return mixed;
  }

  private void mixAt(int joint, Layout layout, WellFlow well, double[] flow) {
    double water = well == null ? 0 : well.water();
    double all = well == null ? 0 : well.fluid();
    double gas = well == null ? 0 : well.gas();
    for (int k = 0; k < layout.degree(joint); k++) {
      int run = layout.runAt(joint, k);
      if (layout.downstream(run, flow[run]) == joint) {
        double size = Math.abs(flow[run]);
        all += size;
        water += size * waterCut[run];
        gas += size * gasPerLiquid[run];
      }
    }
    double cut = all > 0 ? Math.min(1, water / all) : 1;
    for (int k = 0; k < layout.degree(joint); k++) {
      int run = layout.runAt(joint, k);
      if (layout.upstream(run, flow[run]) == joint) {
        waterCut[run] = cut;
        gasPerLiquid[run] = all > 0 ? gas / all : 0;
      }
    }
  }

  double waterCut(int run) {
    return waterCut[run];
  }

  /** Standard m3 with each m3 of liquid. */
  double gasPerLiquid(int run) {
    return gasPerLiquid[run];
  }

  /** The largest change of any line's share of water, or of its gas in parts of itself. */
  double differsFrom(Composition other) {
    double most = 0;
    for (int i = 0; i < waterCut.length; i++) {
      most = Math.max(most, Math.abs(waterCut[i] - other.waterCut[i]));
      if (gasPerLiquid[i] > 0) {
        double change = Math.abs(gasPerLiquid[i] - other.gasPerLiquid[i]);
        most = Math.max(most, change / gasPerLiquid[i]);
      }
    }
    return most;
  }
}
