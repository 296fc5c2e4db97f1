package tankyard.engine.window;

import java.util.Optional;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rounding;
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

  /**
   * To which side its reading is rounded wherever it is shown: what must be reached never lower,
   * what must not be passed never higher than it was worked out.
   */
  public Rounding rounding() {
    return kind.rounding;
  }

  /** What sort of limit. */
  public enum Kind {
    TANK_INLET("tank inlet", Rounding.UP),
    TANK_LEVEL("level in the tank", Rounding.UP),
    CREST("crest", Rounding.UP),
    STUFFING_BOX("stuffing box", Rounding.DOWN),
    RELIEF_VALVE("relief valve", Rounding.DOWN),
    NAMEPLATE("nameplate", Rounding.DOWN),
    PIPE_RATING("pipe rating", Rounding.DOWN),
    GAUGE_RANGE("gauge range", Rounding.DOWN),
    FLOAT_PULL("float pull", Rounding.DOWN);

    private final String words;
    private final Rounding rounding;

    Kind(String words, Rounding rounding) {
      this.words = words;
      this.rounding = rounding;
    }

    public String words() {
      return words;
    }
  }
}
