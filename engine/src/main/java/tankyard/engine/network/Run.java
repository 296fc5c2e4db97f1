package tankyard.engine.network;

/** A link between two joints of a network, by their ids. */
public record Run(String id, String from, String to, Link link) {

  String otherEnd(String joint) {
    return from.equals(joint) ? to : from;
  }

  /** The joint the flow comes from. */
  String upstream(double flow) {
    return flow >= 0 ? from : to;
  }

  /** The joint the flow goes to. */
  String downstream(double flow) {
    return flow >= 0 ? to : from;
  }
}
