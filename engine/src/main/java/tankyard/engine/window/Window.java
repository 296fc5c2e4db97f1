package tankyard.engine.window;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Pressure;

/**
 * The back-pressure window of one separator over all design cases: between the least and the most
 * its gauge may read.
 *
 * @param least the largest of what must be reached; empty where no water leg tells
 * @param most the smallest of what must not be passed; empty where no limit is known
 * @param needed every lower limit of every case, the governing one first
 * @param allowed every upper limit of every case, the governing one first
 * @param tankAlone the least if only the tank is looked at and not the hill
 * @param notChecked limits nobody knows: "Float pull: the port is not known"
 * @param recommended a setting in the window; empty where none works
 * @param setting the typed setting, or else the recommended one
 * @param floatWork what its float can do; empty where port or float is not known
 * @param notValid where more gas comes than a vessel full of liquid can have: the window is for one
 *     that stands full
 * @param byCase its two ends in every case for itself, so that summer can be held beside winter
 */
@RecordBuilder
public record Window(
    String separatorId,
    String separatorName,
    Optional<PressureLimit> least,
    Optional<PressureLimit> most,
    List<PressureLimit> needed,
    List<PressureLimit> allowed,
    Optional<PressureLimit> tankAlone,
    Optional<OilLeg> oilLeg,
    List<String> notChecked,
    Pressure buildUp,
    Optional<Setting> recommended,
    Optional<Setting> setting,
    Optional<FloatWork> floatWork,
    Optional<GasBreak> notValid,
    List<InCase> byCase)
    implements WindowBuilder.With {

  public Window {
    needed = List.copyOf(needed);
    allowed = List.copyOf(allowed);
    notChecked = List.copyOf(notChecked);
    byCase = List.copyOf(byCase);
  }

  /**
   * The window if a case were the only one.
   *
   * @param least gauge reading; empty where no water leg tells
   * @param most gauge reading; empty where no limit is known
   */
  public record InCase(String caseId, Optional<Pressure> least, Optional<Pressure> most) {}

  /** The setting to tell people: none where gas makes the window not valid. */
  public Optional<Setting> advised() {
    return notValid.isPresent() ? Optional.empty() : setting;
  }

  /** How many upper limits nobody typed: port and float of one pull are one limit. */
  public long limitsNotKnown() {
    return notChecked.stream()
        .map(NotChecked::subject)
        .filter(subject -> !subject.equals(NotChecked.HEAT))
        .distinct()
        .count();
  }

  /** Whether some setting works, build-up included. */
  public boolean open() {
    return recommended.isPresent();
  }
}
