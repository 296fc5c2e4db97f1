package tankyard.engine.study;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;

/**
 * How long a separator holds what comes, in one case.
 *
 * @param oil rate into it
 * @param water rate into it
 * @param oilVolume above the interface
 * @param waterVolume below it
 * @param oilMinutes empty where no oil comes
 * @param waterMinutes empty where no water comes
 * @param waterDrops smallest drop of water that has time to fall out of the oil
 * @param oilDrops smallest drop of oil that has time to rise out of the water
 * @param designWater rate the water leg is sized for
 * @param gas what comes with the liquid, where some of it is free at the vessel's pressure
 */
@RecordBuilder
public record SeparatorResult(
    String separatorId,
    LiquidRate oil,
    LiquidRate water,
    Volume oilVolume,
    Volume waterVolume,
    Optional<Computed<Time>> oilMinutes,
    Optional<Computed<Time>> waterMinutes,
    Optional<Computed<Length>> waterDrops,
    Optional<Computed<Length>> oilDrops,
    Computed<LiquidRate> designWater,
    Optional<VesselGas> gas)
    implements SeparatorResultBuilder.With {}
