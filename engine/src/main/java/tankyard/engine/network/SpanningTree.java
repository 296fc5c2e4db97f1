package tankyard.engine.network;

import java.util.Arrays;
import java.util.function.IntPredicate;

/** A tree through all joints, grown from the held joints. */
final class SpanningTree {
  /** The run of a joint that is held. */
  static final int NONE = -1;

  private final Topology topology;
  private final int[] outwards;
  private final int[] towardsHeld;
  private final boolean[] inTree;
  private int reached;
  private int carries;

  /** Of the fewest runs from each joint to a held one. */
  SpanningTree(Topology topology) {
    this(topology, new double[topology.runs()]);
  }

  /**
   * Of the runs that weigh least.
   *
   * @param weight of each run; runs of one weight are taken as they are met
   */
  SpanningTree(Topology topology, double[] weight) {
    this.topology = topology;
    int joints = topology.joints();
    int[] order = new int[joints];
    towardsHeld = new int[joints];
    inTree = new boolean[topology.runs()];
    grow(order, weight);
    outwards = Arrays.copyOf(order, reached);
  }

  private void grow(int[] order, double[] weight) {
    Arrays.fill(towardsHeld, NONE);
    boolean[] seen = new boolean[order.length];
    LightestFirst open = new LightestFirst(topology.runs());
    for (int j = 0; j < order.length; j++) {
      if (topology.isHeld(j)) {
        seen[j] = true;
        order[reached++] = j;
      }
    }
    int looked = 0;
    while (looked < reached || !open.isEmpty()) {
      for (; looked < reached; looked++) {
        int here = order[looked];
        for (int k = 0; k < topology.degree(here); k++) {
          int run = topology.runAt(here, k);
          if (!seen[topology.otherEnd(run, here)]) {
            open.add(run, weight[run]);
          }
        }
      }
      if (!open.isEmpty()) {
        int run = open.poll();
        int joint = seen[topology.from(run)] ? topology.to(run) : topology.from(run);
        if (!seen[joint]) {
          seen[joint] = true;
          towardsHeld[joint] = run;
          inTree[run] = true;
          carries++;
          order[reached++] = joint;
        }
      }
    }
  }

  /** Joints that have a way to a held one, each after the one its tree run leads to. */
  int[] outwards() {
    return outwards;
  }

  /** The ways to all of them. */
  Ways ways() {
    return Ways.to(outwards, topology, towardsHeld);
  }

  /**
   * The ways to those of them that are asked for: as far from the held joints one after the other,
   * and in the order of their runs, so that neighbours in memory are met together.
   */
  Ways ways(IntPredicate asked) {
    int[] far = new int[towardsHeld.length];
    long[] rows = new long[outwards.length];
    int count = 0;
    for (int here : outwards) {
      int run = towardsHeld[here];
      far[here] = run == NONE ? 0 : far[topology.otherEnd(run, here)] + 1;
      if (asked.test(here)) {
        rows[count++] = ((long) far[here] << 32) | (run == NONE ? here : run);
      }
    }
    Arrays.sort(rows, 0, count);
    int[] joints = new int[count];
    for (int k = 0; k < count; k++) {
      int low = (int) rows[k];
      joints[k] = rows[k] >>> 32 == 0 ? low : outerEnd(low);
    }
    return Ways.to(joints, topology, towardsHeld);
  }

  private int outerEnd(int run) {
    int from = topology.from(run);
    return towardsHeld[from] == run ? from : topology.to(run);
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
        through[topology.from(i)] -= exact[i];
        through[topology.to(i)] += exact[i];
      }
    }
    for (int k = outwards.length - 1; k >= 0; k--) {
      int here = outwards[k];
      int run = towardsHeld[here];
      if (run != NONE) {
        double out = inflow[here] + through[here];
        exact[run] = topology.from(run) == here ? out : -out;
        through[topology.otherEnd(run, here)] += out;
      }
    }
    return exact;
  }
}
