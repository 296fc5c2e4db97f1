package tankyard.engine.pipes.gasliquid;

import java.util.List;
import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.working.Caution;

/**
 * A gas-liquid line marched from its end up to its start.
 *
 * @param liftPascals net of all rises and falls
 * @param frictionPascals with fittings
 * @param accelerationPascals spent on speeding the gas up
 * @param heldPascals added where a fall would have drawn a vacuum: none is credited
 * @param liquidM3 what stands in the line while it flows
 * @param points in the order of the line's stations
 */
public record GasLiquidMarch(
    AbsolutePressure upstream,
    double liftPascals,
    double frictionPascals,
    double accelerationPascals,
    double heldPascals,
    double liquidM3,
    List<GasLiquidPoint> points,
    List<Caution> cautions) {
  public GasLiquidMarch {
    points = List.copyOf(points);
    cautions = List.copyOf(cautions);
  }

  /** The part of the pipe's volume that liquid fills. */
  public double meanHoldUp(double volumeM3) {
    return liquidM3 / volumeM3;
  }
}
