package tankyard.engine.window;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Service;
import tankyard.engine.study.Survey;

/** Limits nobody typed: they neither pass nor govern, and they are said. */
public final class NotChecked {
  /** No limit of its own: it lowers a rating that is known. */
  public static final String HEAT = "Heat on plastic pipe";

  private NotChecked() {}

  /** What stands before the colon: "Relief valve: its setting is not known." */
  public static String subject(String words) {
    return words.substring(0, Math.max(words.indexOf(':'), 0));
  }

  static List<String> of(Survey survey, Separator separator) {
    Lease lease = survey.lease();
    List<String> found = new ArrayList<>();
    lease.wells().stream()
        .filter(w -> w.status().stays() && w.boxLimit().isEmpty())
        .forEach(w -> found.add(w.name() + "'s stuffing box: its limit is not known."));
    missing(separator.relief().isEmpty(), "Relief valve: its setting is not known.", found);
    missing(
        separator.nameplate().isEmpty(),
        "Nameplate: the rated pressure is not known. A vessel without a nameplate has no rating.",
        found);
    missing(separator.gaugeRange().isEmpty(), "Gauge: its range is not known.", found);
    missing(
        separator.dumpValve().port().isEmpty(),
        "Float pull: the port of the dump valve is not known.",
        found);
    missing(
        separator.dumpValve().floatBall().isEmpty(),
        "Float pull: size, weight and lever of the float are not known.",
        found);
    heat(survey, found);
    return found;
  }

  /** The rating at the ground's temperature is kept: heat can only lower it, and by how much? */
  private static void heat(Survey survey, List<String> found) {
    long untyped =
        survey.lease().wells().stream()
            .filter(w -> w.status().stays() && w.headTemperature().isEmpty())
            .count();
    boolean plastic =
        survey.laid().values().stream()
            .anyMatch(
                l ->
                    l.line().service() == Service.FLOW_LINE
                        && l.pipe().material().weakensWithHeat());
    missing(
        untyped > 0 && plastic,
        HEAT
            + ": how warm the fluid of "
            + untyped
            + (untyped == 1 ? " well" : " wells")
            + " comes is not known. Its pipe is rated as cold as the ground.",
        found);
  }

  private static void missing(boolean isMissing, String words, List<String> found) {
    if (isMissing) {
      found.add(words);
    }
  }
}
