package tankyard.engine.network;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The part of a network that closes loops, with the ways from it to the held joints. What dangles
 * from it is a tree: mass alone says what flows there, so only this part needs solving together,
 * and each branch's pressures follow outwards afterwards.
 *
 * <p>Free joints come first in its numbering and are the unknowns; held ones follow. It is the same
 * whatever flows, and stands with the layout from one solve to the next.
 */
final class LoopPart {
  private static final int OUTSIDE = -1;

  private final Topology whole;

  /** Where each joint of the whole stands here. */
  private final int[] place;

  /** Which joint of the whole each joint here is. */
  private final int[] joint;

  /** Which run of the whole each run here is. */
  private final int[] run;

  /** Runs of the branches that meet the loops. */
  private final int[] meets;

  private final int free;

  /** Along the tree of the whole: to the joints here, and to those of the branches. */
  private final Ways ways;

  private final Ways branches;
  private final Topology topology;
  private final GradientPattern pattern;

  /** The loops that a tree leaves open. */
  LoopPart(Topology whole, SpanningTree tree) {
    this.whole = whole;
    place = new int[whole.joints()];
    boolean[] inside = inside(tree);
    free = number(inside);
    run = runsInside();
    ways = tree.ways(this::has);
    branches = tree.ways(j -> !has(j));
    renumber(GradientPattern.leastFill(topology(joints()), free));
    joint = jointsInside();
    meets = IntStream.range(0, whole.runs()).filter(this::meets).toArray();
    topology = topology(joints());
    pattern = new GradientPattern(topology, free);
  }

  /** Every run beside the tree closes a loop, by way of the held joints its ends lead to. */
  private boolean[] inside(SpanningTree tree) {
    boolean[] inside = new boolean[place.length];
    for (int i = 0; i < whole.runs(); i++) {
      if (!tree.has(i)) {
        inside[whole.from(i)] = true;
        inside[whole.to(i)] = true;
      }
    }
    int[] outwards = tree.outwards();
    for (int k = outwards.length - 1; k >= 0; k--) {
      int here = outwards[k];
      if (inside[here] && !whole.isHeld(here)) {
        inside[whole.otherEnd(tree.towardsHeld(here), here)] = true;
      }
    }
    return inside;
  }

  private int number(boolean[] inside) {
    Arrays.fill(place, OUTSIDE);
    int next = 0;
    for (int j = 0; j < place.length; j++) {
      if (inside[j] && !whole.isHeld(j)) {
        place[j] = next++;
      }
    }
    int frees = next;
    for (int j = 0; j < place.length; j++) {
      if (inside[j] && whole.isHeld(j)) {
        place[j] = next++;
      }
    }
    return frees;
  }

  private void renumber(int[] number) {
    for (int j = 0; j < place.length; j++) {
      if (has(j) && place[j] < free) {
        place[j] = number[place[j]];
      }
    }
  }

  private int joints() {
    int joints = 0;
    for (int here : place) {
      joints += here == OUTSIDE ? 0 : 1;
    }
    return joints;
  }

  private int[] jointsInside() {
    int[] inside = new int[joints()];
    for (int j = 0; j < place.length; j++) {
      if (has(j)) {
        inside[place[j]] = j;
      }
    }
    return inside;
  }

  private boolean meets(int run) {
    return has(whole.from(run)) != has(whole.to(run));
  }

  private int[] runsInside() {
    int[] inside = new int[whole.runs()];
    int count = 0;
    for (int i = 0; i < inside.length; i++) {
      if (has(whole.from(i)) && has(whole.to(i))) {
        inside[count++] = i;
      }
    }
    return Arrays.copyOf(inside, count);
  }

  private Topology topology(int joints) {
    boolean[] held = new boolean[joints];
    for (int j = 0; j < place.length; j++) {
      if (has(j)) {
        held[place[j]] = whole.isHeld(j);
      }
    }
    int[] from = new int[run.length];
    int[] to = new int[run.length];
    for (int i = 0; i < run.length; i++) {
      from[i] = place[whole.from(run[i])];
      to[i] = place[whole.to(run[i])];
    }
    return new Topology(held, from, to);
  }

  /** The whole, with runs in its loops that a crest may hold. */
  Circuit blocked(Circuit network) {
    Link[] link = network.link().clone();
    for (int i : run) {
      link[i] = link[i].isLevel() ? link[i] : Blocked.of(link[i]);
    }
    return new Circuit(network.topology(), network.inflow(), network.heldPa(), link);
  }

  /**
   * The loops of a network of this layout.
   *
   * @param branchFlow by the whole's numbers; what the runs outside the loops carry
   */
  Circuit circuit(Circuit network, double[] branchFlow) {
    double[] inflow = new double[joint.length];
    double[] heldPa = new double[joint.length];
    for (int here = 0; here < joint.length; here++) {
      inflow[here] = network.inflow()[joint[here]];
      heldPa[here] = network.heldPa()[joint[here]];
    }
    addBranches(inflow, branchFlow);
    Link[] link = new Link[run.length];
    for (int i = 0; i < run.length; i++) {
      link[i] = network.link()[run[i]];
    }
    return new Circuit(topology, inflow, heldPa, link);
  }

  /** What a branch gathers comes in where it meets the loops. */
  private void addBranches(double[] inflow, double[] branchFlow) {
    for (int i : meets) {
      if (has(whole.from(i))) {
        inflow[place[whole.from(i)]] -= branchFlow[i];
      } else {
        inflow[place[whole.to(i)]] += branchFlow[i];
      }
    }
  }

  /** Whether a joint of the whole is part of it. */
  boolean has(int joint) {
    return place[joint] != OUTSIDE;
  }

  /** To its joints, by the whole's numbers. */
  Ways ways() {
    return ways;
  }

  /** To the joints that dangle from it, by the whole's numbers. */
  Ways branches() {
    return branches;
  }

  /** How many joints are free, and come first. */
  int free() {
    return free;
  }

  /** Where the entries of its equations stand. */
  GradientPattern pattern() {
    return pattern;
  }

  /** The number in the whole of a run here. */
  int inWhole(int runHere) {
    return run[runHere];
  }

  /** The loops' share of flows by the whole's numbers. */
  double[] flowsOf(double[] wholeFlow) {
    double[] here = new double[run.length];
    for (int i = 0; i < here.length; i++) {
      here[i] = wholeFlow[run[i]];
    }
    return here;
  }

  /** The loops' share of pressures by the whole's numbers. */
  double[] pressuresOf(double[] wholePressure) {
    double[] here = new double[joint.length];
    for (int k = 0; k < here.length; k++) {
      here[k] = wholePressure[joint[k]];
    }
    return here;
  }

  /** Writes flows of the loops among those of the whole. */
  void putFlows(double[] flowHere, double[] wholeFlow) {
    for (int i = 0; i < run.length; i++) {
      wholeFlow[run[i]] = flowHere[i];
    }
  }

  /** Writes pressures of the loops among those of the whole. */
  void putPressures(double[] pressureHere, double[] wholePressure) {
    for (int k = 0; k < joint.length; k++) {
      wholePressure[joint[k]] = pressureHere[k];
    }
  }
}
