package tankyard.engine.network;

/**
 * A network numbered for Newton's method: free joints come first and are the unknowns; held ones
 * follow. Runs keep their numbers.
 */
final class Indexed {
  final int free;
  final Link[] link;
  final int[] from;
  final int[] to;

  /** Into each joint, m3/s. */
  final double[] inflow;

  /** Where each joint of the layout stands here. */
  private final int[] place;

  Indexed(Network network) {
    Layout layout = network.layout();
    place = new int[layout.joints().size()];
    int next = 0;
    for (int j = 0; j < place.length; j++) {
      place[j] = layout.isHeld(j) ? -1 : next++;
    }
    free = next;
    for (int j = 0; j < place.length; j++) {
      place[j] = layout.isHeld(j) ? next++ : place[j];
    }
    inflow = new double[place.length];
    for (int j = 0; j < place.length; j++) {
      inflow[place[j]] = network.inflow(j);
    }
    int runs = layout.runs().size();
    link = new Link[runs];
    from = new int[runs];
    to = new int[runs];
    for (int i = 0; i < runs; i++) {
      link[i] = network.link(i);
      from[i] = place[layout.from(i)];
      to[i] = place[layout.to(i)];
    }
  }

  /** The joint a flow comes from. */
  int upstream(int run, double flow) {
    return flow >= 0 ? from[run] : to[run];
  }

  /** The joint a flow goes to. */
  int downstream(int run, double flow) {
    return flow >= 0 ? to[run] : from[run];
  }

  /** Values by the layout's numbers, in the order kept here. */
  double[] inOrder(double[] byLayout) {
    double[] here = new double[place.length];
    for (int j = 0; j < place.length; j++) {
      here[place[j]] = byLayout[j];
    }
    return here;
  }
}
