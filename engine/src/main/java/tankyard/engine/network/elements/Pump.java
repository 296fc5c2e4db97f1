package tankyard.engine.network.elements;

import tankyard.engine.network.Leak;
import tankyard.engine.network.Link;

/** A pump that adds pressure from its start to its end, with a check valve: nothing comes back. */
public record Pump(PumpGain gain) implements Link {
  @Override
  public Upstream upstream(double flow, double downstreamPa) {
    if (flow < 0) {
      // Upstream is the discharge then: it stands a shut-off gain and the leak above the suction.
      return Leak.past(flow, downstreamPa + gain.at(0).pascals());
    }
    PumpGain.Gain added = gain.at(flow);
    return new Upstream(downstreamPa - added.pascals(), -added.perFlow(), 1);
  }
}
