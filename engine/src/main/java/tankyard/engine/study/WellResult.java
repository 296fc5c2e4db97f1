package tankyard.engine.study;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.working.Computed;

/**
 * What one well's stuffing box feels in one case.
 *
 * @param separatorId where its fluid ends up: a separator, or a gun barrel
 * @param rate all fluid, while it runs
 * @param box pressure at the stuffing box with the gauge at {@code gauge}
 * @param gauge the separator's gauge reading this was worked out for; of a gun barrel, which has no
 *     gauge, the weight of the liquid above its inlet
 * @param lift part of it from differences in height and the oil above the inlet
 * @param friction part of it from line loss
 * @param restart what starts its lines again after they stood cold, where they gel
 */
@RecordBuilder
public record WellResult(
    String wellId,
    String separatorId,
    LiquidRate rate,
    Computed<Pressure> box,
    Pressure gauge,
    Pressure lift,
    Pressure friction,
    Optional<Pressure> limit,
    Optional<Restart> restart)
    implements WellResultBuilder.With {}
