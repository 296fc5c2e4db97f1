package tankyard.engine.window;

import java.util.Optional;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.working.Computed;

/**
 * One thing that bounds what the gauge may read, from below or from above, in one case.
 *
 * @param kind what sort of limit it is
 * @param thingId the line, well or vessel it comes from
 * @param name as a person says it: "crest 1,000 ft out", "Well 9's stuffing box"
 * @param crest where a high point on the way sets it
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
    Optional<Crest> crest,
    String caseId,
    Computed<Pressure> gauge,
    Pressure lift,
    Pressure friction,
    Pressure valve,
    Pressure margin,
    Optional<Pressure> heightBand) {

  /**
   * A high point on the way.
   *
   * @param along from the start of its line, on the map
   * @param line its name
   */
  public record Crest(Length along, String line) {
    /** For example "crest 1,000 ft out on Water leg": the distance is none of its heights. */
    String words(UnitSystem units) {
      Unit unit = units.unit(Dimension.LENGTH);
      String distance = Figures.grouped(Math.rint(along.in(unit))) + " " + unit.symbol();
      return "crest " + distance + " out on " + line;
    }
  }

  /** Its name with the distances in it in a person's own units; {@link #name()} has feet. */
  public String nameIn(UnitSystem units) {
    return crest.map(c -> c.words(units)).orElse(name);
  }

  /**
   * Whether it is passed even with nothing on the gauge: the way alone takes more than it leaves.
   */
  public boolean beyondAnyGauge() {
    return kind.rounding == Rounding.DOWN && gauge.value().pascals() < 0;
  }

  /**
   * Where it is: "no reading of the gauge would do for Trunk's pipe rating: the way alone loses
   * ...".
   */
  public String whyNoGauge(Unit unit) {
    String lifts = lift.pascals() > 0 ? " and lifts " + part(lift, unit) : "";
    return "no reading of the gauge would do for "
        + name
        + ": the way alone loses "
        + part(friction, unit)
        + lifts;
  }

  private static String part(Pressure pressure, Unit unit) {
    return Figures.decimals(pressure.in(unit), unit == Unit.PSI ? 1 : 0) + " " + unit.symbol();
  }

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
