package tankyard.engine.cures;

import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;

/**
 * How far the water tank can stand, its heights as they are, in one size of pipe.
 *
 * @param pipeId catalogue id
 * @param setting gauge reading with no oil flowing that is to do it
 * @param times design water rates, over today's
 * @param needs what the gauge must read at some distances, the tank full
 * @param drained how much less it asks for at pump-off; nothing where the leg goes over its top
 * @param crest what sets the least on the way as it is drawn, whatever lies beyond
 */
public record TankReach(
    String pipeId,
    String pipeName,
    Pressure setting,
    List<AtRate> times,
    List<AtDistance> needs,
    Pressure drained,
    Optional<String> crest) {
  public TankReach {
    times = List.copyOf(times);
    needs = List.copyOf(needs);
  }

  /**
   * The longest leg at a rate.
   *
   * @param over today's design rate
   * @param longest of pipe; empty where not even a short leg does
   */
  public record AtRate(Fraction over, LiquidRate rate, Optional<Length> longest) {}

  /** What the gauge must read at a length of leg. */
  public record AtDistance(Length length, Pressure gauge) {}
}
