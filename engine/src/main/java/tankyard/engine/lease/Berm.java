package tankyard.engine.lease;

import java.util.Optional;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;

/**
 * The bermed pad, taken as a rectangle with upright walls.
 *
 * @param length inside
 * @param width inside
 * @param rain the storm the berm must also hold
 * @param freeboard added on top
 * @param largestTankFactor 1 by the federal rule; some states want 1.5
 * @param height as built, if there is one
 */
public record Berm(
    MapPoint corner,
    Length length,
    Length width,
    Optional<Length> rain,
    Optional<Length> freeboard,
    Optional<Fraction> largestTankFactor,
    Optional<Length> height) {

  /** Whether a place lies within its walls. */
  public boolean contains(MapPoint place) {
    double east = place.east().metres() - corner.east().metres();
    double north = place.north().metres() - corner.north().metres();
    return east >= 0 && east <= length.metres() && north >= 0 && north <= width.metres();
  }
}
