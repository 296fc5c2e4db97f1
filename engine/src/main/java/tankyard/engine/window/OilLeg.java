package tankyard.engine.window;

import tankyard.engine.units.Pressure;
import tankyard.engine.working.Computed;

/**
 * What the oil leg needs at the regulator in its worst case.
 *
 * @param need pressure at the regulator to push the oil into its tank
 * @param regulatorRules whether the setting is above that need, so that the screw does something
 */
public record OilLeg(
    String lineId, String caseId, Computed<Pressure> need, boolean regulatorRules) {}
