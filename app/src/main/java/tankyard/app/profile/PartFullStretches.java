package tankyard.app.profile;

import java.util.ArrayList;
import java.util.List;
import tankyard.app.profile.ProfilePicture.Spot;
import tankyard.app.profile.ProfilePicture.Stretch;

/**
 * Where a line runs part full. A stretch ends where the head meets the pipe, which is seldom at a
 * point of the line: there a spot is put in, so that the head is drawn down to the pipe.
 */
final class PartFullStretches {
  /** Closer than this is the same place. */
  private static final double SAME = 1e-6;

  private final List<Spot> spots = new ArrayList<>();
  private final List<Stretch> stretches;

  /**
   * Puts a spot where a stretch ends and none is.
   *
   * @param given of the line's points, in their order
   * @param stretches as they were worked out, in the same unit
   */
  PartFullStretches(List<Spot> given, List<Stretch> stretches) {
    this.stretches = List.copyOf(stretches);
    for (Spot spot : given) {
      if (!spots.isEmpty()) {
        Spot before = spots.get(spots.size() - 1);
        stretches.forEach(s -> putIn(s.from(), before, spot));
        stretches.forEach(s -> putIn(s.to(), before, spot));
      }
      spots.add(spot);
    }
  }

  List<Spot> spots() {
    return List.copyOf(spots);
  }

  List<Stretch> stretches() {
    return stretches;
  }

  private void putIn(double end, Spot before, Spot after) {
    if (end > before.distance() + SAME && end < after.distance() - SAME) {
      double share = (end - before.distance()) / (after.distance() - before.distance());
      double pipe = between(before.pipe(), after.pipe(), share);
      spots.add(
          new Spot(end, between(before.ground(), after.ground(), share), pipe, pipe, 0, true));
    }
  }

  private static double between(double a, double b, double share) {
    return a + (b - a) * share;
  }
}
