package tankyard.engine.window;

import java.util.Optional;
import tankyard.engine.units.Pressure;
import tankyard.engine.working.Computed;

/**
 * What the oil leg needs at the regulator in its worst case.
 *
 * @param need pressure at the regulator to push the oil into its tank
 * @param otherSeason the most it needs in summer where the worst is a winter, or the other way
 *     round; empty where no case has that season
 * @param regulatorRules whether the setting is above that need, so that the screw does something
 */
public record OilLeg(
    String lineId,
    String caseId,
    Computed<Pressure> need,
    Optional<InCase> otherSeason,
    boolean regulatorRules) {

  /** What is needed in another case. */
  public record InCase(String caseId, Computed<Pressure> need) {}
}
