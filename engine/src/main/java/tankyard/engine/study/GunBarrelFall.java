package tankyard.engine.study;

import io.soabase.recordbuilder.core.RecordBuilder;
import tankyard.engine.lease.Service;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.working.Computed;

/**
 * Whether a gun barrel's water or oil runs to its tank by its own fall. Heights are above the gun
 * barrel's bottom.
 *
 * @param governs what it must get over: the tank's inlet, or a crest
 * @param loss head lost on the way there
 * @param stands height the liquid backs up to at that rate
 * @param spare from there up to the weir, or to the oil outlet; below zero it can't run
 */
@RecordBuilder
public record GunBarrelFall(
    String lineId,
    Service service,
    LiquidRate rate,
    String governs,
    Computed<Length> loss,
    Computed<Length> stands,
    Computed<Length> spare)
    implements GunBarrelFallBuilder.With {}
