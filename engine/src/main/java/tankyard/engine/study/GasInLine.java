package tankyard.engine.study;

import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.Speed;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;

/**
 * What gas does in a line.
 *
 * @param free gas beside the liquid at the end it leaves by, where it is largest
 * @param all with what the oil holds
 * @param gasPart gas's part of the flow by volume at that end
 * @param holdUp part of the pipe that liquid fills, on the average of its length
 * @param liquidSpeed liquid's rate over the whole bore
 * @param gasSpeed gas's rate at that end over the whole bore
 * @param patterns how the two share the pipe, in the direction of flow
 * @param wearSpeed velocity of both together above which the wall may wear
 * @param steps of the march
 */
public record GasInLine(
    GasRate free,
    GasRate all,
    Fraction gasPart,
    Fraction holdUp,
    Speed liquidSpeed,
    Speed gasSpeed,
    String patterns,
    Optional<Computed<Speed>> wearSpeed,
    int steps,
    List<Caution> cautions) {
  public GasInLine {
    cautions = List.copyOf(cautions);
  }

  /** Of both together at the end. */
  public double mixtureFtPerS() {
    return liquidSpeed.toFeetPerSecond() + gasSpeed.toFeetPerSecond();
  }
}
