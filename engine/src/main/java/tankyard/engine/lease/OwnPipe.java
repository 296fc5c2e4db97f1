package tankyard.engine.lease;

import java.util.Optional;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;

/**
 * A pipe that no catalogue lists: bore, roughness and what it stands.
 *
 * @param bore inside diameter
 * @param outside outside diameter
 * @param ratingWater with water inside at 73 degF
 * @param ratingOil with oil inside at 73 degF
 */
public record OwnPipe(
    String id,
    String name,
    Length bore,
    Optional<Length> outside,
    Optional<Length> roughness,
    Optional<Pressure> ratingWater,
    Optional<Pressure> ratingOil) {}
