package tankyard.engine.wells;

import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * A pumping well makes its day's liquid in its running hours, and within them in strokes: what its
 * line sees is {@code daily x 24 / hours x surge}.
 */
public final class RunningRate {
  /**
   * On a line of its own: the peak of a pump that lifts half the time (pi, rounded); from memory.
   */
  public static final double ONE_WELL_SURGE = 3;

  private RunningRate() {}

  public static Computed<LiquidRate> of(LiquidRate daily, Time hoursADay, double surge) {
    double hours = hoursADay.toHours();
    if (!(hours > 0 && hours <= 24 && surge >= 1)) {
      throw new IllegalArgumentException(
          "A well runs above 0 and up to 24 hours a day with a surge of 1 or more, not "
              + hours
              + " h and "
              + surge);
    }
    return Computed.of(
        LiquidRate.ofBarrelsPerDay(daily.toBarrelsPerDay() * 24 / hours * surge),
        () ->
            Working.of(
                "Rate while it runs",
                "Q",
                "Qd*24/t*s",
                Unit.BARREL_PER_DAY,
                Source.memory("half-sine stroke: the peak is about three times the average"),
                Term.of("Qd", "a day's liquid", daily, Unit.BARREL_PER_DAY),
                Term.of("t", "hours it runs", hoursADay, Unit.HOUR),
                Term.number("s", "surge of the strokes", surge)));
  }
}
