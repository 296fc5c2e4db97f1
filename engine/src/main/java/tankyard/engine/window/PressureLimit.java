package tankyard.engine.window;

import java.util.Optional;
import tankyard.engine.units.Pressure;
import tankyard.engine.working.Computed;

/**
 * One thing that bounds what the gauge may read, from below or from above, in one case.
 *
 * @param kind what sort of limit it is
 * @param thingId the line, well or vessel it comes from
 * @param name as a person says it: "crest at 1,000 ft", "Well 9's stuffing box"
 * @param caseId the design case it was worked out for
 * @param gauge the gauge reading it sets
 * @param lift part from differences in height
 * @param friction part from line loss
 * @param valve part lost in the dump valve
 * @param margin added, or kept off
 * @param heightBand plus or minus, from the accuracy of the heights
 */
public record PressureLimit(
    Kind kind,
    String thingId,
    String name,
    String caseId,
    Computed<Pressure> gauge,
    Pressure lift,
    Pressure friction,
    Pressure valve,
    Pressure margin,
    Optional<Pressure> heightBand) {

  /** What sort of limit. */
  public enum Kind {
    TANK_INLET("tank inlet"),
    TANK_LEVEL("level in the tank"),
    CREST("crest"),
    STUFFING_BOX("stuffing box"),
    RELIEF_VALVE("relief valve"),
    NAMEPLATE("nameplate"),
    PIPE_RATING("pipe rating"),
    GAUGE_RANGE("gauge range"),
    FLOAT_PULL("float pull");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }
}
