package tankyard.engine.network;

import java.util.Arrays;

/** A tree through a layout, grown from the held joints. */
final class SpanningTree {
  private static final int NONE = -1;

  private final Layout layout;
  private final int[] outwards;
  private final int[] towardsHeld;
  private final boolean[] inTree;
  private int reached;
  private int carries;

  SpanningTree(Layout layout) {
    this.layout = layout;
    int joints = layout.joints().size();
    int[] order = new int[joints];
    towardsHeld = new int[joints];
    inTree = new boolean[layout.runs().size()];
    grow(order);
    outwards = Arrays.copyOf(order, reached);
  }

  private void grow(int[] order) {
    Arrays.fill(towardsHeld, NONE);
    boolean[] seen = new boolean[order.length];
    for (int j = 0; j < order.length; j++) {
      if (layout.isHeld(j)) {
        seen[j] = true;
        order[reached++] = j;
      }
    }
    for (int next = 0; next < reached; next++) {
      int here = order[next];
      for (int k = 0; k < layout.degree(here); k++) {
        int run = layout.runAt(here, k);
        int other = layout.otherEnd(run, here);
        if (!seen[other]) {
          seen[other] = true;
          towardsHeld[other] = run;
          inTree[run] = true;
          carries++;
          order[reached++] = other;
        }
      }
    }
  }

  /** Joints that have a way to a held one, each after the one its tree run leads to. */
  int[] outwards() {
    return outwards;
  }

  /** The run a free joint's inflow takes towards a held joint. */
  int towardsHeld(int joint) {
    return towardsHeld[joint];
  }

  /** How many runs the tree has. */
  int carries() {
    return carries;
  }

  /**
   * Flows that satisfy every free joint to the last digit: runs beside the tree keep theirs, and
   * the tree's own carry what that leaves.
   */
  double[] balanced(double[] inflow, double[] given) {
    double[] exact = given.clone();
    double[] through = new double[inflow.length];
    for (int i = 0; i < exact.length; i++) {
      if (!inTree[i]) {
        through[layout.from(i)] -= exact[i];
        through[layout.to(i)] += exact[i];
      }
    }
    for (int k = outwards.length - 1; k >= 0; k--) {
      int here = outwards[k];
      int run = towardsHeld[here];
      if (run != NONE) {
        double out = inflow[here] + through[here];
        exact[run] = layout.from(run) == here ? out : -out;
        through[layout.otherEnd(run, here)] += out;
      }
    }
    return exact;
  }
}
