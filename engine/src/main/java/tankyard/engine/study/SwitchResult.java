package tankyard.engine.study;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;
import tankyard.engine.working.Computed;

/**
 * The high-level switch of one tank, in one case.
 *
 * @param rate that comes when it is needed: into an oil tank all the fluid, as when the dump valve
 *     is stuck; into a water tank all the water
 * @param height where it sits above the bottom, if there is one
 * @param highest the highest it may sit
 * @param failsIn from where it sits to the overflow's lip, should it fail
 */
@RecordBuilder
public record SwitchResult(
    String tankId,
    LiquidRate rate,
    Optional<Length> height,
    Computed<Length> highest,
    Optional<Computed<Time>> failsIn)
    implements SwitchResultBuilder.With {}
