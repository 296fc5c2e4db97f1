package tankyard.engine.study;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.working.Computed;

/**
 * What one tank breathes in one case, and what its roof feels of it.
 *
 * @param in air drawn in at the fastest draw
 * @param out air, vapour and gas pushed out at the fastest filling
 * @param vacuum across the vent while it draws in; empty where its bore is not known
 * @param pressure across the vent while it pushes out
 * @param holdsVacuum what the roof stands, typed or by its catalogue size
 * @param holdsPressure likewise
 * @param bore the least that keeps the roof within both; empty where they are not known, or are
 *     used up by what the vent lifts at
 */
@RecordBuilder
public record BreathingResult(
    String tankId,
    Computed<GasRate> in,
    Computed<GasRate> out,
    Optional<Computed<Pressure>> vacuum,
    Optional<Computed<Pressure>> pressure,
    Optional<Pressure> holdsVacuum,
    Optional<Pressure> holdsPressure,
    Optional<Computed<Length>> bore)
    implements BreathingResultBuilder.With {}
