package tankyard.engine.lease;

import java.util.Optional;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Length;
import tankyard.engine.units.Temperature;

/**
 * Where the lease lies.
 *
 * @param datum what all elevations are measured from, in words
 * @param altitude of the datum above sea level, for the air pressure
 * @param groundSummer temperature of the ground at line depth in summer
 * @param groundWinter the same in the coldest month
 * @param heightAccuracy how far a typed elevation may be off, plus or minus
 */
public record Site(
    String datum,
    Optional<Elevation> altitude,
    Optional<Temperature> groundSummer,
    Optional<Temperature> groundWinter,
    Optional<Length> heightAccuracy) {

  public static Site unknown() {
    return new Site("", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }
}
