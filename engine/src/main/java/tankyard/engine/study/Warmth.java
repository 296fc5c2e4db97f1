package tankyard.engine.study;

import java.util.Arrays;
import java.util.Optional;
import tankyard.engine.network.Layout;
import tankyard.engine.pipes.LineCooling;
import tankyard.engine.units.HeatLoss;

/**
 * The temperature at which each gathering line takes its fluid in: the wells' where they are known,
 * mixed at each joint by the heat that flows in. Water brought back comes at the ground's
 * temperature.
 */
final class Warmth {
  private final GatheringPlan plan;
  private final WellFlow[] wells;
  private final double[] flow;
  private final Composition mix;
  private final HeatLoss loss;
  private final double groundK;
  private final double[] upstreamK;

  private Warmth(
      GatheringPlan plan,
      WellFlow[] wells,
      double[] flow,
      Composition mix,
      HeatLoss loss,
      double groundK) {
    this.plan = plan;
    this.wells = wells;
    this.flow = flow;
    this.mix = mix;
    this.loss = loss;
    this.groundK = groundK;
    upstreamK = new double[flow.length];
  }

  /**
   * Mixes along the flow.
   *
   * @param wells by joint; null where there is none
   */
  static Warmth of(
      GatheringPlan plan,
      WellFlow[] wells,
      double[] flow,
      Composition mix,
      HeatLoss loss,
      double groundK) {
    Warmth warmth = new Warmth(plan, wells, flow, mix, loss, groundK);
    Optional<int[]> order = FlowOrder.of(plan.layout(), flow);
    if (order.isEmpty()) {
      // A flow that goes round warms itself: keep to the ground, the thick side.
      Arrays.fill(warmth.upstreamK, groundK);
      return warmth;
    }
    for (int joint : order.get()) {
      warmth.mixAt(joint);
    }
    return warmth;
  }

  private void mixAt(int joint) {
    Layout layout = plan.layout();
    double carried = 0;
    double heat = 0;
    WellFlow well = wells[joint];
    if (well != null) {
      double made = LineCooling.wattsPerKelvin(well.oil(), well.water() - well.returned());
      carried += made + LineCooling.wattsPerKelvin(0, well.returned());
      heat += made * (well.headK().orElse(groundK) - groundK);
    }
    for (int k = 0; k < layout.degree(joint); k++) {
      int run = layout.runAt(joint, k);
      if (layout.downstream(run, flow[run]) == joint) {
        LineCooling cooling = cooling(run);
        double over = upstreamK[run] - groundK;
        carried += cooling.wattsPerKelvin();
        heat +=
            cooling.wattsPerKelvin() * cooling.left(over, plan.lines().get(run).law().lengthM());
      }
    }
    double kelvins = groundK + (carried > 0 ? heat / carried : 0);
    for (int k = 0; k < layout.degree(joint); k++) {
      int run = layout.runAt(joint, k);
      if (layout.upstream(run, flow[run]) == joint) {
        upstreamK[run] = kelvins;
      }
    }
  }

  /**
   * How a line cools at what the network sends through it; strokes come and go too fast to tell.
   */
  LineCooling cooling(int run) {
    double size = Math.abs(flow[run]);
    double cut = mix.waterCut(run);
    return new LineCooling(
        size * (1 - cut), size * cut, loss, plan.lines().get(run).pipe().outside().metres());
  }

  boolean forward(int run) {
    return flow[run] >= 0;
  }

  double upstreamK(int run) {
    return upstreamK[run];
  }

  /** The largest change of any line's temperature, K. */
  double differsFrom(Warmth other) {
    double most = 0;
    for (int i = 0; i < upstreamK.length; i++) {
      most = Math.max(most, Math.abs(upstreamK[i] - other.upstreamK[i]));
    }
    return most;
  }
}
