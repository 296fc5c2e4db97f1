package tankyard.engine.network.elements;

import tankyard.engine.fluids.Drop;
import tankyard.engine.fluids.FlowLaw;
import tankyard.engine.network.Leak;
import tankyard.engine.network.Link;

/**
 * A back-pressure regulator: what stands ahead of it is its setting and what the spring builds up
 * with the flow, whatever stands behind it, until its valve is wide open; below the setting, and
 * against the flow, it is shut. {@code valves.RegulatorLaw} as an element.
 *
 * @param settingPa at lock-up
 * @param buildUpPerFlow Pa/(m3/s), not below zero
 * @param wideOpen what the open valve loses
 */
public record Regulator(double settingPa, double buildUpPerFlow, FlowLaw wideOpen) implements Link {
  public Regulator {
    if (!(buildUpPerFlow >= 0)) {
      throw new IllegalArgumentException(
          "A spring builds up with the flow or not at all: " + buildUpPerFlow + " Pa/(m3/s)");
    }
  }

  @Override
  public Upstream upstream(double flow, double downstreamPa) {
    if (flow < 0) {
      return Leak.past(flow, downstreamPa);
    }
    Drop drop = wideOpen.drop(flow);
    double held = settingPa + buildUpPerFlow * flow;
    double open = downstreamPa + drop.pascals();
    return Leak.until(
        held > open ? new Upstream(held, buildUpPerFlow, 0) : new Upstream(open, drop.slope(), 1),
        flow,
        downstreamPa);
  }
}
