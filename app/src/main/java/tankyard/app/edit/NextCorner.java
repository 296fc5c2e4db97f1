package tankyard.app.edit;

import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Outlined;
import tankyard.engine.units.Length;

/** Where one more corner of an outline comes when nobody has pointed at a place. */
public final class NextCorner {
  private static final double STEP_M = Length.ofFeet(50).metres();

  private NextCorner() {}

  /** After one of its corners: half way to the next, or a stretch on where there is none. */
  public static AddCorner after(Lease lease, String id, int corner) {
    Outlined outline = Places.outlined(lease, id).orElseThrow();
    return new AddCorner(id, corner + 1, place(outline, corner), Optional.empty());
  }

  /** After its last corner. */
  public static AddCorner last(Lease lease, String id) {
    Outlined outline = Places.outlined(lease, id).orElseThrow();
    return after(lease, id, outline.corners().size() - 1);
  }

  private static MapPoint place(Outlined outline, int corner) {
    List<MapPoint> corners = outline.corners();
    MapPoint from = corners.get(corner);
    boolean another = corner + 1 < corners.size();
    if (another || outline.closes()) {
      MapPoint to = corners.get((corner + 1) % corners.size());
      return from.shifted(eastM(from, to) / 2, northM(from, to) / 2);
    }
    if (corners.size() == 1) {
      return from.shifted(STEP_M, 0);
    }
    MapPoint before = corners.get(corner - 1);
    double apart = Math.max(before.metresTo(from), 1e-9);
    double east = eastM(before, from) / apart * STEP_M;
    double north = northM(before, from) / apart * STEP_M;
    // The third corner of what covers ground closes it, and straight on it would cover none.
    boolean turns = outline.withCorner(corners.size(), from).closes();
    return turns ? from.shifted(-north, east) : from.shifted(east, north);
  }

  private static double eastM(MapPoint from, MapPoint to) {
    return to.east().metres() - from.east().metres();
  }

  private static double northM(MapPoint from, MapPoint to) {
    return to.north().metres() - from.north().metres();
  }
}
