package tankyard.engine.study;

import tankyard.engine.network.Link;
import tankyard.engine.wells.InjectionLaw;

/** An injection well as a link of the network, from its wellhead into the ground, which is at 0. */
record WellLink(InjectionLaw law) implements Link {
  @Override
  public Upstream upstream(double flow, double downstreamPa) {
    double perFlow = law.resistance().pascalsPerCubicMetrePerSecond();
    double hold = flow >= 0 ? law.atNoFlow().pascals() : -law.atNoFlow().pascals();
    return new Upstream(downstreamPa + hold + perFlow * Math.abs(flow), perFlow, 1);
  }
}
