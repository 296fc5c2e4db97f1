package tankyard.app.map.plan;

import java.util.List;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;

/**
 * A line as the map draws it.
 *
 * @param spots from its start over its corners to its end, two or more
 * @param way which way it flows: 1 from start to end, -1 back, 0 not at all
 * @param note a result shown with its name; may be empty
 * @param spoken all of it in words
 */
public record PlanLine(
    String id,
    String name,
    Service service,
    List<MapSpot> spots,
    Status status,
    int way,
    String note,
    String spoken)
    implements Cornered {
  public PlanLine {
    spots = List.copyOf(spots);
  }

  @Override
  public int legs() {
    return spots.size() - 1;
  }

  @Override
  public int corners() {
    return spots.size() - 2;
  }

  /** The spot of a corner of the route, from 0. */
  @Override
  public MapSpot corner(int index) {
    return spots.get(index + 1);
  }

  @Override
  public MapSpot before(int corner) {
    return spots.get(corner);
  }

  @Override
  public MapSpot legStart(int leg) {
    return spots.get(leg);
  }

  @Override
  public MapSpot legEnd(int leg) {
    return spots.get(leg + 1);
  }

  @Override
  public int cornerOn(int leg) {
    return leg;
  }

  public double metres() {
    double sum = 0;
    for (int i = 0; i < legs(); i++) {
      sum += spots.get(i).metresTo(spots.get(i + 1));
    }
    return sum;
  }

  /** The spot a share of its length along it. */
  public MapSpot along(double share) {
    double left = Math.max(0, Math.min(1, share)) * metres();
    for (int i = 0; i < legs(); i++) {
      double leg = spots.get(i).metresTo(spots.get(i + 1));
      if (left <= leg && leg > 0) {
        return spots.get(i).towards(spots.get(i + 1), left / leg);
      }
      left -= leg;
    }
    return spots.get(spots.size() - 1);
  }

  public int longestLeg() {
    int longest = 0;
    for (int i = 1; i < legs(); i++) {
      double best = spots.get(longest).metresTo(spots.get(longest + 1));
      if (spots.get(i).metresTo(spots.get(i + 1)) > best) {
        longest = i;
      }
    }
    return longest;
  }
}
