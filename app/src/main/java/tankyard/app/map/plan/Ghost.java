package tankyard.app.map.plan;

import java.util.List;
import java.util.Optional;
import tankyard.app.edit.ThingKind;

/**
 * What a tool shows before it is real: an outline under the pointer, a line being drawn, a box, a
 * tape.
 *
 * @param kind the outline to show at the last spot
 * @param spots of the line, the tape or the two corners of the box
 * @param shape what the spots are
 * @param words shown beside the last spot; may be empty
 * @param landed whether the last spot sits on something it will join
 */
public record Ghost(
    Optional<ThingKind> kind, List<MapSpot> spots, Shape shape, String words, boolean landed) {
  /** What the spots are. */
  public enum Shape {
    THING,
    LINE,
    BOX,
    TAPE
  }

  public Ghost {
    spots = List.copyOf(spots);
  }

  public static Ghost thing(ThingKind kind, MapSpot at, boolean landed) {
    return new Ghost(Optional.of(kind), List.of(at), Shape.THING, "", landed);
  }

  public static Ghost line(List<MapSpot> spots, String words, boolean landed) {
    return new Ghost(Optional.empty(), spots, Shape.LINE, words, landed);
  }

  public static Ghost box(MapSpot a, MapSpot b) {
    return new Ghost(Optional.empty(), List.of(a, b), Shape.BOX, "", false);
  }

  public static Ghost tape(List<MapSpot> spots, String words) {
    return new Ghost(Optional.empty(), spots, Shape.TAPE, words, false);
  }
}
