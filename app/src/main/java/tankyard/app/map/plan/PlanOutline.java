package tankyard.app.map.plan;

import java.util.Comparator;
import java.util.List;
import tankyard.app.edit.ThingKind;
import tankyard.engine.lease.Status;

/**
 * A berm or landmark as the map draws it.
 *
 * @param spots its corners, one or more
 * @param closes whether a side runs from the last back to the first
 * @param water whether what it stands for is water
 * @param setback the rings within which no tank or vessel may stand, where that was typed
 * @param spoken all of it in words
 */
public record PlanOutline(
    String id,
    String name,
    ThingKind kind,
    List<MapSpot> spots,
    boolean closes,
    boolean water,
    Status status,
    List<List<MapSpot>> setback,
    String spoken)
    implements Cornered {
  public PlanOutline {
    spots = List.copyOf(spots);
    setback = setback.stream().map(List::copyOf).toList();
  }

  @Override
  public int corners() {
    return spots.size();
  }

  @Override
  public MapSpot corner(int index) {
    return spots.get(index);
  }

  @Override
  public MapSpot before(int corner) {
    if (corner == 0) {
      return spots.get(closes ? spots.size() - 1 : Math.min(1, spots.size() - 1));
    }
    return spots.get(corner - 1);
  }

  @Override
  public int legs() {
    return closes ? spots.size() : spots.size() - 1;
  }

  @Override
  public MapSpot legStart(int leg) {
    return spots.get(leg);
  }

  @Override
  public MapSpot legEnd(int leg) {
    return spots.get((leg + 1) % spots.size());
  }

  @Override
  public int cornerOn(int leg) {
    return leg + 1;
  }

  /** On its first side, clear of its corners; the spot itself where it is one. */
  public MapSpot onASide() {
    return legs() == 0 ? spots.get(0) : legStart(0).towards(legEnd(0), 0.5);
  }

  /** Its corners, the northernmost first: where its name may stand. */
  public List<MapSpot> fromNorth() {
    return spots.stream().sorted(Comparator.comparingDouble(s -> -s.northM())).toList();
  }
}
