package tankyard.engine.study;

import tankyard.engine.network.Link;
import tankyard.engine.pipes.MarchResult;

/**
 * A laid line as a link of the network.
 *
 * @param times what the line really carries over what the network balances: a line one well has to
 *     itself feels the stroke, the trunk beyond does not
 */
record LineLink(LineFill fill, double times) implements Link {
  @Override
  public Upstream upstream(double flow, double downstreamPa) {
    MarchResult march = march(flow, downstreamPa);
    return new Upstream(
        march.upstreamPascals(), march.upstreamPerFlow() * times, march.upstreamPerDownstream());
  }

  MarchResult march(double flow, double downstreamPa) {
    return fill.march(flow * times, downstreamPa);
  }
}
