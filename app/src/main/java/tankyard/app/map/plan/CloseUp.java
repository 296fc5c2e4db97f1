package tankyard.app.map.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The part of the map where things stand so close that their symbols cover each other: the battery,
 * on a map of the whole lease. It is drawn a second time, larger, in a corner.
 *
 * @param ids of the things in it
 * @param box around them, with room for their outlines
 */
public record CloseUp(Set<String> ids, MapBox box) {
  private static final int FEWEST = 3;

  /** Where more stand on the map than this, the whole map is one crowd. */
  private static final int MOST_THINGS = 300;

  private static final double CROWDED_PX = 22;
  private static final double ROOM_M = 4;
  private static final double WORTH_IT = 2;
  private static final double MARGIN_PX = 34;
  private static final Frame FRAME = new Frame(12, 12, 268, 172);

  /** Where it is drawn, in pixels. */
  public record Frame(double x, double y, double width, double height) {
    public boolean contains(double px, double py) {
      return px >= x && px <= x + width && py >= y && py <= y + height;
    }
  }

  public CloseUp {
    ids = Set.copyOf(ids);
  }

  /** The largest crowd; empty where everything can be told apart, or the map is small. */
  public static Optional<CloseUp> of(Plan plan, Camera camera) {
    if (plan.things().size() > MOST_THINGS) {
      return Optional.empty();
    }
    if (camera.widthPx() < 3 * FRAME.width() || camera.heightPx() < 2 * FRAME.height()) {
      return Optional.empty();
    }
    return crowds(plan, camera).stream()
        .max(Comparator.comparingInt(List::size))
        .filter(crowd -> crowd.size() >= FEWEST)
        .map(CloseUp::around)
        .filter(c -> c.camera().pxPerM() > WORTH_IT * camera.pxPerM());
  }

  private static CloseUp around(List<PlanThing> crowd) {
    Set<String> ids = new HashSet<>();
    List<MapSpot> spots = new ArrayList<>();
    for (PlanThing thing : crowd) {
      double room = ROOM_M + thing.lengthM() / 2;
      ids.add(thing.id());
      spots.add(thing.at().plus(-room, -room));
      spots.add(thing.at().plus(room, room));
    }
    return new CloseUp(ids, MapBox.around(spots).orElseThrow());
  }

  private static List<List<PlanThing>> crowds(Plan plan, Camera camera) {
    List<List<PlanThing>> crowds = new ArrayList<>();
    Set<PlanThing> left = new HashSet<>(plan.things());
    for (PlanThing start : plan.things()) {
      if (!left.remove(start)) {
        continue;
      }
      List<PlanThing> crowd = new ArrayList<>();
      Deque<PlanThing> next = new ArrayDeque<>(List.of(start));
      while (!next.isEmpty()) {
        PlanThing thing = next.remove();
        crowd.add(thing);
        List<PlanThing> near =
            left.stream().filter(o -> camera.px(o.at().metresTo(thing.at())) < CROWDED_PX).toList();
        near.forEach(left::remove);
        next.addAll(near);
      }
      crowds.add(crowd);
    }
    return crowds;
  }

  /** Whether it would hide a thing or a corner of a line. */
  public boolean hides(Plan plan, Camera camera) {
    return Stream.concat(
            plan.things().stream().map(PlanThing::at),
            plan.lines().stream().flatMap(l -> l.spots().stream()))
        .anyMatch(s -> FRAME.contains(camera.x(s) - MARGIN_PX, camera.y(s) - MARGIN_PX));
  }

  public boolean holds(PlanThing thing) {
    return ids.contains(thing.id());
  }

  public Frame frame() {
    return FRAME;
  }

  /** Its own camera, with the origin in the corner of its frame. */
  public Camera camera() {
    return new Camera(box.centre(), 1, FRAME.width(), FRAME.height()).fitted(box, MARGIN_PX);
  }
}
