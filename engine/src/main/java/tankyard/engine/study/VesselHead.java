package tankyard.engine.study;

import tankyard.engine.fluids.LiquidState;
import tankyard.engine.lease.Separator;

/**
 * The weight of liquid inside a full separator: oil above the interface, brine below.
 *
 * @param groundM elevation of the ground it stands on
 */
public record VesselHead(Separator separator, double groundM, LiquidState oil, LiquidState brine) {

  public double gaugeM() {
    return groundM + separator.gaugeHeight().metres();
  }

  public double interfaceM() {
    return groundM + separator.interfaceHeight().metres();
  }

  /** What the pressure grows by from the gauge down to an elevation, in Pa. */
  public double fromGaugeTo(double elevationM) {
    return above(elevationM) - above(gaugeM());
  }

  /** Pressure at an elevation against the interface. */
  private double above(double elevationM) {
    double below = interfaceM() - elevationM;
    return (below > 0 ? brine : oil).liquid().staticPascals(below);
  }

  /** The liquid that stands between the gauge and the interface. */
  public LiquidState atGauge() {
    return gaugeM() >= interfaceM() ? oil : brine;
  }
}
