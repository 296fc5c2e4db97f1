package tankyard.app.profile;

import java.util.ArrayList;
import java.util.List;
import tankyard.app.profile.ProfilePicture.Spot;
import tankyard.app.profile.ProfilePicture.Stretch;

/**
 * Where a line runs part full. The points only say which of them lie dry; past the last dry one the
 * line fills up again where the head of the full points behind it meets the pipe.
 */
final class PartFullStretches {
  /** No gauge shows less. */
  private static final double NO_PRESSURE = 1e-6;

  private final List<Spot> spots = new ArrayList<>();
  private final List<Stretch> stretches = new ArrayList<>();

  /** Finds the stretches, and puts a spot where each of them ends. */
  PartFullStretches(List<Spot> given) {
    int i = 0;
    while (i < given.size()) {
      if (!given.get(i).partFull()) {
        spots.add(given.get(i++));
        continue;
      }
      double from = start(given, i);
      while (i < given.size() && given.get(i).partFull()) {
        spots.add(given.get(i++));
      }
      double to = given.get(i - 1).distance();
      if (i < given.size()) {
        Spot fillsUp = fillsUp(given, i);
        spots.add(fillsUp);
        to = fillsUp.distance();
      }
      stretches.add(new Stretch(from, to));
    }
  }

  List<Spot> spots() {
    return List.copyOf(spots);
  }

  List<Stretch> stretches() {
    return List.copyOf(stretches);
  }

  private static double start(List<Spot> given, int firstDry) {
    Spot before = given.get(Math.max(0, firstDry - 1));
    return before.pressure() <= NO_PRESSURE ? before.distance() : given.get(firstDry).distance();
  }

  /** Between the last dry spot and the first full one, where head and pipe meet. */
  private static Spot fillsUp(List<Spot> given, int firstFull) {
    Spot dry = given.get(firstFull - 1);
    Spot full = given.get(firstFull);
    double span = full.distance() - dry.distance();
    double slope = headSlope(given, firstFull);
    double headAtDry = full.head() - slope * span;
    double above = dry.pipe() - headAtDry; // the pipe stands clear of the water here
    double below = full.head() - full.pipe(); // and this far under it there
    double share = above + below > 0 ? Math.max(0, Math.min(1, above / (above + below))) : 0;
    double pipe = between(dry.pipe(), full.pipe(), share);
    return new Spot(
        between(dry.distance(), full.distance(), share),
        between(dry.ground(), full.ground(), share),
        pipe,
        pipe,
        0,
        true);
  }

  private static double headSlope(List<Spot> given, int firstFull) {
    if (firstFull + 1 >= given.size()) {
      return 0;
    }
    Spot full = given.get(firstFull);
    Spot next = given.get(firstFull + 1);
    double span = next.distance() - full.distance();
    return span > 0 ? (next.head() - full.head()) / span : 0;
  }

  private static double between(double a, double b, double share) {
    return a + (b - a) * share;
  }
}
