package tankyard.engine.network.elements;

import tankyard.engine.fluids.Drop;
import tankyard.engine.fluids.FlowLaw;
import tankyard.engine.network.Leak;
import tankyard.engine.network.Link;

/**
 * Lets liquid through from its start to its end and shuts against the rest.
 *
 * @param open what it loses while it passes
 */
public record CheckValve(FlowLaw open) implements Link {
  @Override
  public Upstream upstream(double flow, double downstreamPa) {
    if (flow < 0) {
      return Leak.past(flow, downstreamPa);
    }
    Drop drop = open.drop(flow);
    return new Upstream(downstreamPa + drop.pascals(), drop.slope(), 1);
  }
}
