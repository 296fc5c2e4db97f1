package tankyard.engine.network.elements;

import tankyard.engine.network.Leak;
import tankyard.engine.network.Link;
import tankyard.engine.wells.InjectionLaw;

/**
 * An injection well, from its head to a joint held at nothing: the pressure it holds shut, and more
 * with the rate. Below that it takes nothing, and it gives nothing back.
 */
public record InjectionWell(InjectionLaw law) implements Link {
  @Override
  public Upstream upstream(double flow, double downstreamPa) {
    if (flow < 0) {
      return Leak.past(flow, downstreamPa);
    }
    Upstream open =
        new Upstream(
            downstreamPa + law.pascals(flow), law.resistance().pascalsPerCubicMetrePerSecond(), 1);
    return Leak.until(open, flow, downstreamPa);
  }
}
