package tankyard.engine.study;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Mass;
import tankyard.engine.units.Time;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;

/**
 * What the tanks give, in one case.
 *
 * @param oilRate into the oil tanks
 * @param waterRate into the water tanks
 * @param allFluid both, as comes over when the dump valve is stuck
 * @param oilUsable between the sales outlets and the high switches of all oil tanks
 * @param haulInterval days between loads
 * @param roadOut days the road may be shut with a load still to be taken
 * @param refusedLoad days until the oil tanks are full after a purchaser refused a load
 * @param oilNeeded one load and what comes while the road is out
 * @param waterRoom above pump-on, up to the overflow
 * @param waterHours until the water tanks run over with the injection pump down
 * @param band between pump-off and pump-on of all water tanks
 * @param pumpRuns how long the pumps take to draw that down against the water coming in; empty
 *     where they can't
 * @param pumpRests how long the water takes to fill it again
 * @param startsADay of the pumps, where they both run and rest
 * @param loadWeight what a load weighs on the road
 */
@RecordBuilder
public record StorageResult(
    LiquidRate oilRate,
    LiquidRate waterRate,
    LiquidRate allFluid,
    Optional<Computed<Volume>> oilUsable,
    Optional<Computed<Time>> haulInterval,
    Optional<Computed<Time>> roadOut,
    Optional<Computed<Time>> refusedLoad,
    Optional<Computed<Volume>> oilNeeded,
    Optional<Computed<Volume>> waterRoom,
    Optional<Computed<Time>> waterHours,
    Optional<Computed<Volume>> band,
    Optional<Computed<Time>> pumpRuns,
    Optional<Computed<Time>> pumpRests,
    Optional<Computed<Fraction>> startsADay,
    Optional<Computed<Mass>> loadWeight)
    implements StorageResultBuilder.With {}
