package tankyard.engine.pipes.gasliquid;

import java.util.List;
import java.util.Optional;
import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.pipes.ControlPoint;
import tankyard.engine.pipes.PartFull;
import tankyard.engine.working.Caution;

/**
 * A gas-liquid line marched from its end up to its start.
 *
 * @param liftPascals net of all rises and falls
 * @param frictionPascals with fittings
 * @param accelerationPascals spent on speeding the gas up
 * @param heldPascals added where a fall would have drawn a vacuum: none is credited
 * @param liquidM3 what stands in the line while it flows
 * @param steps how many the march took
 * @param hardest the step that cost most
 * @param stretch what counts for the upstream pressure
 * @param control the high point beyond which the line runs part full, if one does
 * @param points in the order of the line's stations
 */
public record GasLiquidMarch(
    AbsolutePressure upstream,
    double liftPascals,
    double frictionPascals,
    double accelerationPascals,
    double heldPascals,
    double liquidM3,
    int steps,
    GasLiquidStep hardest,
    GasLiquidStretch stretch,
    Optional<ControlPoint> control,
    List<PartFull> partFull,
    List<GasLiquidPoint> points,
    List<Caution> cautions) {
  public GasLiquidMarch {
    partFull = List.copyOf(partFull);
    points = List.copyOf(points);
    cautions = List.copyOf(cautions);
  }

  /** The part of the pipe's volume that liquid fills. */
  public double meanHoldUp(double volumeM3) {
    return liquidM3 / volumeM3;
  }
}
