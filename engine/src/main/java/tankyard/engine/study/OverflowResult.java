package tankyard.engine.study;

import io.soabase.recordbuilder.core.RecordBuilder;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.working.Computed;

/** What an overflow passes by gravity against all the fluid that may come, in one case. */
@RecordBuilder
public record OverflowResult(String lineId, Computed<LiquidRate> capacity, LiquidRate allFluid)
    implements OverflowResultBuilder.With {}
