package tankyard.engine.study;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.working.Computed;

/**
 * How much a line several wells share carries over the day, whatever the case says about which run
 * at once. Losses are the whole line's, up to a crest that governs.
 *
 * @param wellIds the wells behind it
 * @param share of the time {@code atOnce} is not passed
 * @param average the day's average
 * @param atOnce the rate not passed for that share of the time, wells starting and stopping at
 *     times of their own
 * @param allOn every well on, as after an outage
 * @param allOnShare of the time, if they start and stop at times of their own
 * @param staggered with timers that never let two banks of wells run together; empty where they
 *     change nothing here
 */
@RecordBuilder
public record SharedLine(
    String lineId,
    List<String> wellIds,
    Fraction share,
    LiquidRate average,
    Computed<LiquidRate> atOnce,
    LiquidRate allOn,
    Fraction allOnShare,
    Pressure averageLoss,
    Computed<Pressure> atOnceLoss,
    Pressure allOnLoss,
    Optional<Staggered> staggered)
    implements SharedLineBuilder.With {
  public SharedLine {
    wellIds = List.copyOf(wellIds);
  }

  /**
   * What is left of the peak with the timers in two banks.
   *
   * @param rate the larger bank's, with the wells no timer can move
   * @param loss at that rate
   * @param first ids of the wells behind the line that are in the first bank
   * @param second ids of those in the second; the others run with both
   */
  public record Staggered(LiquidRate rate, Pressure loss, List<String> first, List<String> second) {
    public Staggered {
      first = List.copyOf(first);
      second = List.copyOf(second);
    }
  }
}
