package tankyard.engine.study;

import tankyard.engine.network.Link;
import tankyard.engine.pipes.LineAtFlow;
import tankyard.engine.pipes.MarchResult;

/**
 * A laid line as a link of the network.
 *
 * @param known the line at the flow it most likely carries, worked out beforehand; any other flow
 *     is worked out when it is asked for
 * @param times what the line really carries over what the network balances: a line one well has to
 *     itself feels the stroke, the trunk beyond does not
 */
record LineLink(LineAtFlow known, double times) implements Link {
  @Override
  public Upstream upstream(double flow, double downstreamPa) {
    MarchResult march = at(flow).march(downstreamPa);
    return new Upstream(
        march.upstreamPascals(), march.upstreamPerFlow() * times, march.upstreamPerDownstream());
  }

  /**
   * The line at what it really carries.
   *
   * @param flow that the network balances
   */
  LineAtFlow at(double flow) {
    return known.at(flow * times);
  }
}
