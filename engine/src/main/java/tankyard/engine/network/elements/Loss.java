package tankyard.engine.network.elements;

import tankyard.engine.fluids.Drop;
import tankyard.engine.fluids.FlowLaw;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.network.Link;
import tankyard.engine.units.Cv;
import tankyard.engine.valves.ValveLoss;

/** Anything that loses pressure by a flow law, alike both ways. */
public record Loss(FlowLaw law) implements Link {

  /** A valve that stands open: the dump valve at its working travel. */
  public static Loss valve(Cv cv, Liquid liquid) {
    return new Loss(ValveLoss.law(cv, liquid));
  }

  @Override
  public Upstream upstream(double flow, double downstreamPa) {
    Drop drop = law.drop(Math.abs(flow));
    return new Upstream(downstreamPa + drop.pascals(), drop.slope(), 1);
  }
}
