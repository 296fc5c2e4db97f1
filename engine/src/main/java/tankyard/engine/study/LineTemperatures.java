package tankyard.engine.study;

import java.util.Optional;
import tankyard.engine.units.Length;
import tankyard.engine.units.Temperature;
import tankyard.engine.working.Computed;

/**
 * How warm a line is.
 *
 * @param ground at the line in this case
 * @param start of the liquid at the line's start
 * @param end of the liquid at its end
 * @param rated what its pipe is rated at: the warmest that can stand in it; for a leg, the warmest
 *     that comes into its vessel
 * @param coolingLength over which the difference to the ground falls to 37 %; empty where nobody
 *     typed the wells' temperatures and the line is taken to be as cold as the ground
 */
public record LineTemperatures(
    Temperature ground,
    Temperature start,
    Temperature end,
    Temperature rated,
    Optional<Computed<Length>> coolingLength) {}
