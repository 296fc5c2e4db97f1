package tankyard.engine.study;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;
import tankyard.engine.working.Computed;

/**
 * What an overflow passes by gravity against all the fluid that may come, in one case.
 *
 * @param fall from end to end, as typed or drawn; empty where it is drawn level or rising and
 *     nobody typed it: then the capacity counts on a slope that is steep enough
 * @param leastFall that carries all the fluid; empty where no slope makes the bore pass it
 * @param catches how long the tank it leads to has room for all the fluid: a water tank from
 *     pump-on, an oil tank from its sales outlet, up to its lip; empty where nothing comes
 */
@RecordBuilder
public record OverflowResult(
    String lineId,
    Computed<LiquidRate> capacity,
    LiquidRate allFluid,
    Optional<Length> fall,
    Optional<Computed<Length>> leastFall,
    Optional<Computed<Time>> catches)
    implements OverflowResultBuilder.With {}
