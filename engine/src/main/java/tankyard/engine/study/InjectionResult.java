package tankyard.engine.study;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Power;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Time;
import tankyard.engine.working.Computed;

/**
 * One injection pump and the well it feeds, in one case.
 *
 * @param wellhead pressure while the pump runs
 * @param discharge pressure at the pump
 * @param lineLoss friction between the two
 * @param power at the shaft
 * @param hours a day it must run
 * @param redLine pump gauge reading at which the wellhead is at its permit
 */
@RecordBuilder
public record InjectionResult(
    String pumpId,
    String wellId,
    LiquidRate rate,
    Computed<Pressure> wellhead,
    Computed<Pressure> discharge,
    Pressure lineLoss,
    Computed<Power> power,
    Computed<Time> hours,
    Optional<Computed<Pressure>> redLine)
    implements InjectionResultBuilder.With {}
