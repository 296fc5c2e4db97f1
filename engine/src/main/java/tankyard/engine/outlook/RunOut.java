package tankyard.engine.outlook;

import java.util.Optional;
import tankyard.engine.units.Time;
import tankyard.engine.working.Computed;

/**
 * One thing that runs out.
 *
 * @param thingId the thing or line; empty where it is several
 * @param caseId the case in which it does first; empty where it is the same in all
 * @param words what is reached, as a person says it
 * @param after months from today; zero where it has run out already
 */
public record RunOut(
    Kind kind, String thingId, Optional<String> caseId, String words, Computed<Time> after) {

  /** What runs out. */
  public enum Kind {
    /** The injection pumps run the share of the day that leaves nothing for a bad day. */
    PUMP_LONG_HOURS,
    /** They run the clock round. */
    PUMP_FULL_TIME,
    /** Pumped all day at the limit of their pressure the injection wells take no more. */
    WELL_PRESSURE,
    /** The day's water is all the permits allow. */
    PERMIT_RATE,
    /** The water tanks no longer last while nobody looks. */
    WATER_HOURS,
    /** All the fluid is all the overflow passes. */
    OVERFLOW,
    /** The least gauge reading reaches the reading at today's setting. */
    SETTING,
    /** No setting works any more. */
    WINDOW
  }

  /** Whether it has run out already. */
  public boolean already() {
    return after.value().seconds() == 0;
  }
}
