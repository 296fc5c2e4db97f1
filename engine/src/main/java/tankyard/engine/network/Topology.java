package tankyard.engine.network;

/**
 * Runs between joints, some of them held: all by number, without a name, so that a part of a layout
 * can be taken out and worked on alone.
 */
final class Topology {
  private final boolean[] held;
  private final int[] from;
  private final int[] to;
  private final Neighbours neighbours;

  /** Takes the arrays over: nobody may write into them afterwards. */
  Topology(boolean[] held, int[] from, int[] to) {
    this.held = held;
    this.from = from;
    this.to = to;
    neighbours = new Neighbours(held.length, from, to);
  }

  int joints() {
    return held.length;
  }

  int runs() {
    return from.length;
  }

  boolean isHeld(int joint) {
    return held[joint];
  }

  int from(int run) {
    return from[run];
  }

  int to(int run) {
    return to[run];
  }

  /** The joint a flow comes from. */
  int upstream(int run, double flow) {
    return flow >= 0 ? from[run] : to[run];
  }

  /** The joint a flow goes to. */
  int downstream(int run, double flow) {
    return flow >= 0 ? to[run] : from[run];
  }

  int otherEnd(int run, int joint) {
    return from[run] == joint ? to[run] : from[run];
  }

  int degree(int joint) {
    return neighbours.degree(joint);
  }

  int runAt(int joint, int k) {
    return neighbours.runAt(joint, k);
  }
}
