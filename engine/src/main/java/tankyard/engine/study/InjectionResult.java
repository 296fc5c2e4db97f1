package tankyard.engine.study;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Power;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Time;
import tankyard.engine.working.Computed;

/**
 * One injection pump and a well its water reaches, in one case; a pump with two wells has two.
 *
 * @param rate the pump's, while it runs
 * @param intoWell what of it goes into this well
 * @param wellhead pressure while the pump runs, with what other pumps push into the well
 * @param discharge pressure at the pump
 * @param lineLoss friction between the two
 * @param power at the shaft
 * @param hours a day it must run
 * @param limit of the wellhead: the permit as typed, else the screening form where the zone's depth
 *     is known
 * @param redLine pump gauge reading at which the wellhead is at its limit, with the line losses of
 *     this rate
 */
@RecordBuilder
public record InjectionResult(
    String pumpId,
    String wellId,
    LiquidRate rate,
    LiquidRate intoWell,
    Computed<Pressure> wellhead,
    Computed<Pressure> discharge,
    Pressure lineLoss,
    Computed<Power> power,
    Computed<Time> hours,
    Optional<Computed<Pressure>> limit,
    Optional<Computed<Pressure>> redLine)
    implements InjectionResultBuilder.With {}
