package tankyard.app.map.plan;

import java.util.Optional;

/**
 * Where a pointer lands once it has been drawn to what is near.
 *
 * @param thingId the thing it landed on
 * @param line the line it landed on, where that was allowed and there was no thing
 */
public record Snap(MapSpot at, Optional<String> thingId, Optional<OnLine> line) {
  /** A spot on a leg of a line. */
  public record OnLine(String lineId, int leg) {}

  public boolean isFree() {
    return thingId.isEmpty() && line.isEmpty();
  }
}
