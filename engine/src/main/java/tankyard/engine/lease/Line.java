package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;

/**
 * A line from one thing to another. Flow is positive from {@code from} to {@code to}.
 *
 * @param from id of the thing it leaves
 * @param to id of the thing it reaches
 * @param route corners and pegs between the two, in order
 * @param pipe id of the pipe it is laid with
 * @param length of pipe if it was measured; otherwise it is taken off the map
 * @param slack what the trench adds to the length on the map, for wander and slope
 * @param depth of the pipe below the ground; the lease's practice if not said
 * @param fittings on it beside what its ends need
 * @param fittingLength straight pipe that would lose as much as its fittings, where they are not
 *     counted one by one
 * @param fall from end to end, of an overflow
 */
@RecordBuilder
public record Line(
    String id,
    String name,
    Service service,
    String from,
    String to,
    List<RoutePoint> route,
    String pipe,
    Optional<Length> length,
    Optional<Fraction> slack,
    Optional<Length> depth,
    List<FittingCount> fittings,
    Optional<Length> fittingLength,
    Optional<Length> fall,
    Status status)
    implements LineBuilder.With {
  public Line {
    route = List.copyOf(route);
    fittings = List.copyOf(fittings);
  }

  /** The trade's word for it. */
  public String kind() {
    return service.words();
  }

  public boolean touches(String thingId) {
    return from.equals(thingId) || to.equals(thingId);
  }

  public Line renamed(String newName) {
    return withName(newName);
  }

  public Line withEnds(String newFrom, String newTo) {
    return withFrom(newFrom).withTo(newTo);
  }
}
