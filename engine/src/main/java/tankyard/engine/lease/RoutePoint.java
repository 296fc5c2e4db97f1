package tankyard.engine.lease;

import java.util.Optional;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Length;

/**
 * A corner of a line's route, or a peg along it.
 *
 * @param ground height of the ground there, if it was shot
 * @param depth of the pipe there, where it differs from the line's own
 */
public record RoutePoint(MapPoint at, Optional<Elevation> ground, Optional<Length> depth) {
  public static RoutePoint at(MapPoint place) {
    return new RoutePoint(place, Optional.empty(), Optional.empty());
  }
}
