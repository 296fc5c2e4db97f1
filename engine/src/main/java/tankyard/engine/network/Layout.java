package tankyard.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which runs lie between which joints, and which joints are held: what stays the same while laws,
 * rates and pressures change. Joints and runs are known by their number in it; ids are looked up
 * once, at the edge.
 */
public final class Layout {
  private final List<String> joints;
  private final List<Ends> runs;
  private final Map<String, Integer> jointById;
  private final Map<String, Integer> runById;
  private final Topology topology;
  private final SpanningTree tree;

  /** Picked out when they are first solved. */
  private LoopPart loops;

  /** A run between two joints, all by id. */
  public record Ends(String run, String from, String to) {}

  /**
   * A layout.
   *
   * @param held whether each joint's pressure is held
   */
  public Layout(List<String> joints, boolean[] held, List<Ends> runs) {
    this.joints = List.copyOf(joints);
    this.runs = List.copyOf(runs);
    jointById = numbers(this.joints, "joints");
    runById = numbers(this.runs.stream().map(Ends::run).toList(), "runs");
    topology =
        new Topology(
            held.clone(),
            this.runs.stream().mapToInt(r -> jointOf(r, r.from())).toArray(),
            this.runs.stream().mapToInt(r -> jointOf(r, r.to())).toArray());
    tree = new SpanningTree(topology);
  }

  private static Map<String, Integer> numbers(List<String> ids, String what) {
    Map<String, Integer> numbers = new HashMap<>();
    for (int i = 0; i < ids.size(); i++) {
      if (numbers.put(ids.get(i), i) != null) {
        throw new IllegalArgumentException("Two " + what + " are called " + ids.get(i));
      }
    }
    return numbers;
  }

  private int jointOf(Ends run, String id) {
    Integer joint = jointById.get(id);
    if (joint == null || run.from().equals(run.to())) {
      throw new IllegalArgumentException(
          "Run "
              + run.run()
              + " must lie between two joints of the network, not "
              + run.from()
              + " and "
              + run.to());
    }
    return joint;
  }

  public List<String> joints() {
    return joints;
  }

  public List<Ends> runs() {
    return runs;
  }

  /** The number of a joint; it must be there. */
  public int joint(String id) {
    return jointById.get(id);
  }

  /** The number of a run; it must be there. */
  public int run(String id) {
    return runById.get(id);
  }

  /** Whether any joint's pressure is held. */
  boolean hasHeld() {
    for (int j = 0; j < joints.size(); j++) {
      if (isHeld(j)) {
        return true;
      }
    }
    return false;
  }

  public boolean isHeld(int joint) {
    return topology.isHeld(joint);
  }

  public int from(int run) {
    return topology.from(run);
  }

  public int to(int run) {
    return topology.to(run);
  }

  /** The joint a flow comes from. */
  public int upstream(int run, double flow) {
    return topology.upstream(run, flow);
  }

  /** The joint a flow goes to. */
  public int downstream(int run, double flow) {
    return topology.downstream(run, flow);
  }

  public int otherEnd(int run, int joint) {
    return topology.otherEnd(run, joint);
  }

  /** How many runs meet at a joint. */
  public int degree(int joint) {
    return topology.degree(joint);
  }

  /**
   * A run at a joint.
   *
   * @param k from zero, in the order of the runs
   */
  public int runAt(int joint, int k) {
    return topology.runAt(joint, k);
  }

  /**
   * Joints that have a way to a held one, each after the one that its way leads to first: the order
   * of a tree grown from the held joints.
   */
  public int[] outwards() {
    return tree.outwards().clone();
  }

  /** The run that leads a free joint towards a held one in that tree. */
  public int towardsHeld(int joint) {
    return tree.towardsHeld(joint);
  }

  Topology topology() {
    return topology;
  }

  SpanningTree tree() {
    return tree;
  }

  /**
   * The part that closes loops; two threads that ask at once may each make it, and both are right.
   */
  LoopPart loops() {
    LoopPart known = loops;
    if (known == null) {
      known = new LoopPart(topology, tree);
      loops = known;
    }
    return known;
  }

  /**
   * Whether the flows follow from the joints alone: no loops, and one held joint to each part that
   * hangs together.
   */
  public boolean isTree() {
    return tree.carries() == runs.size();
  }

  /**
   * The flows that satisfy every joint when only the runs of a spanning tree carry.
   *
   * @param inflow m3/s into each joint
   */
  public double[] treeFlows(double[] inflow) {
    return tree.balanced(inflow, new double[runs.size()]);
  }

  /** Joints with no way to one whose pressure is held: nothing can be said about them. */
  public List<String> cutOff() {
    if (tree.outwards().length == joints.size()) {
      return List.of();
    }
    boolean[] reached = new boolean[joints.size()];
    Arrays.stream(tree.outwards()).forEach(j -> reached[j] = true);
    List<String> lost = new ArrayList<>();
    for (int j = 0; j < reached.length; j++) {
      if (!reached[j]) {
        lost.add(joints.get(j));
      }
    }
    return lost;
  }
}
