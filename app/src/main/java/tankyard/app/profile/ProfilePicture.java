package tankyard.app.profile;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.app.chart.Axis;

/**
 * A line's profile, ready to be drawn. All values in the units shown.
 *
 * @param lineId the line
 * @param title its name and what it joins
 * @param fromName the thing it leaves
 * @param toName the thing it reaches
 * @param across distance along the pipe
 * @param up elevation
 * @param partFull stretches that run part full
 * @param gas hold-up and pattern at points along the line; empty without gas
 * @param headWords what the head is of; or why none is drawn
 */
record ProfilePicture(
    String lineId,
    String title,
    String fromName,
    String toName,
    Axis across,
    Axis up,
    String lengthUnit,
    String pressureUnit,
    List<Spot> spots,
    List<Stretch> partFull,
    Optional<Crest> crest,
    List<GasAt> gas,
    boolean hasHead,
    String headWords) {

  /** One point along the pipe; {@code head} is an elevation. */
  record Spot(
      double distance,
      double ground,
      double pipe,
      double head,
      double pressure,
      boolean partFull) {}

  /** How gas and liquid share the pipe at a distance, in words. */
  record GasAt(double distance, String words) {}

  /** From one distance to another. */
  record Stretch(double from, double to) {}

  /** The high point that governs. */
  record Crest(double distance, double pipe, String words) {}

  ProfilePicture {
    spots = List.copyOf(spots);
    partFull = List.copyOf(partFull);
    gas = List.copyOf(gas);
  }

  double length() {
    return spots.get(spots.size() - 1).distance();
  }

  /** What there is at a distance, between the points on either side. */
  Spot at(double distance) {
    double inside = Math.max(spots.get(0).distance(), Math.min(distance, length()));
    int after = 1;
    while (after < spots.size() - 1 && spots.get(after).distance() < inside) {
      after++;
    }
    Spot left = spots.get(after - 1);
    Spot right = spots.get(after);
    double span = right.distance() - left.distance();
    double share = span > 0 ? (inside - left.distance()) / span : 0;
    return new Spot(
        inside,
        between(left.ground(), right.ground(), share),
        between(left.pipe(), right.pipe(), share),
        between(left.head(), right.head(), share),
        between(left.pressure(), right.pressure(), share),
        partFull.stream().anyMatch(s -> inside >= s.from() && inside <= s.to()));
  }

  /** Of the nearest point; empty without gas. */
  String gasWords(double distance) {
    return gas.stream()
        .min(Comparator.comparingDouble(g -> Math.abs(g.distance() - distance)))
        .map(GasAt::words)
        .orElse("");
  }

  private static double between(double left, double right, double share) {
    return left + (right - left) * share;
  }
}
