package tankyard.engine.network;

import java.util.Arrays;
import java.util.PriorityQueue;

/** A tree through a layout, grown from the held joints. */
final class SpanningTree {
  private static final int NONE = -1;

  private final Layout layout;
  private final int[] outwards;
  private final int[] towardsHeld;
  private final boolean[] inTree;
  private int reached;
  private int carries;

  /** Of the fewest runs from each joint to a held one. */
  SpanningTree(Layout layout) {
    this(layout, new double[layout.runs().size()]);
  }

  /**
   * Of the runs that weigh least.
   *
   * @param weight of each run; runs of one weight are taken as they are met
   */
  SpanningTree(Layout layout, double[] weight) {
    this.layout = layout;
    int joints = layout.joints().size();
    int[] order = new int[joints];
    towardsHeld = new int[joints];
    inTree = new boolean[layout.runs().size()];
    grow(order, weight);
    outwards = Arrays.copyOf(order, reached);
  }

  private void grow(int[] order, double[] weight) {
    Arrays.fill(towardsHeld, NONE);
    boolean[] seen = new boolean[order.length];
    PriorityQueue<Met> open = new PriorityQueue<>();
    for (int j = 0; j < order.length; j++) {
      if (layout.isHeld(j)) {
        seen[j] = true;
        order[reached++] = j;
      }
    }
    int looked = 0;
    int met = 0;
    while (looked < reached || !open.isEmpty()) {
      for (; looked < reached; looked++) {
        int here = order[looked];
        for (int k = 0; k < layout.degree(here); k++) {
          int run = layout.runAt(here, k);
          if (!seen[layout.otherEnd(run, here)]) {
            open.add(new Met(run, layout.otherEnd(run, here), weight[run], met++));
          }
        }
      }
      Met next = open.poll();
      if (next != null && !seen[next.joint]) {
        seen[next.joint] = true;
        towardsHeld[next.joint] = next.run;
        inTree[next.run] = true;
        carries++;
        order[reached++] = next.joint;
      }
    }
  }

  /** A run met on the way and the joint it leads to. */
  private record Met(int run, int joint, double weight, int place) implements Comparable<Met> {
    @Override
    public int compareTo(Met other) {
      int lighter = Double.compare(weight, other.weight);
      return lighter != 0 ? lighter : Integer.compare(place, other.place);
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

  /** Whether a run is part of it. */
  boolean has(int run) {
    return inTree[run];
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
