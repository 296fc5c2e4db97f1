package tankyard.engine.study;

import java.util.Optional;
import tankyard.engine.network.Layout;

/** Joints in the order in which the flow reaches them. */
final class FlowOrder {
  private FlowOrder() {}

  /** Each joint after all that flow to it; empty where a flow goes round. */
  static Optional<int[]> of(Layout layout, double[] flow) {
    int joints = layout.joints().size();
    int[] awaited = new int[joints];
    for (int i = 0; i < flow.length; i++) {
      awaited[layout.downstream(i, flow[i])]++;
    }
    int[] order = new int[joints];
    int ready = 0;
    for (int j = 0; j < joints; j++) {
      if (awaited[j] == 0) {
        order[ready++] = j;
      }
    }
    for (int next = 0; next < ready; next++) {
      int joint = order[next];
      for (int k = 0; k < layout.degree(joint); k++) {
        int run = layout.runAt(joint, k);
        int beyond = layout.downstream(run, flow[run]);
        if (beyond != joint && --awaited[beyond] == 0) {
          order[ready++] = beyond;
        }
      }
    }
    return ready == joints ? Optional.of(order) : Optional.empty();
  }
}
