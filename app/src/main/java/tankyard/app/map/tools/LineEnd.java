package tankyard.app.map.tools;

import java.util.Optional;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.Snap;

/** One end of a line being drawn: on a thing, or on another line where a tee will be made. */
record LineEnd(MapSpot at, Optional<String> thingId, Optional<Snap.OnLine> line) {
  static LineEnd of(Snap snap) {
    return new LineEnd(snap.at(), snap.thingId(), snap.line());
  }

  boolean isSame(LineEnd other) {
    boolean sameThing = thingId.isPresent() && thingId.equals(other.thingId);
    boolean sameLine =
        line.isPresent()
            && other.line.isPresent()
            && line.get().lineId().equals(other.line.get().lineId());
    return sameThing || sameLine;
  }
}
