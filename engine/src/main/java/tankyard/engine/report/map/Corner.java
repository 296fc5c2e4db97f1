package tankyard.engine.report.map;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Vessel;
import tankyard.engine.lease.Well;
import tankyard.engine.study.Outlines;

/**
 * A part of the lease where things stand too close to be told apart at the map's scale.
 *
 * @param things that stand there
 * @param lease what it covers, in metres
 */
record Corner(String title, List<Thing> things, Rectangle2D lease) {
  /** Closer than this on the page, in points, two things count as one crowd. */
  private static final double CLOSE = 64;

  /** More enlarged corners have no room beside the map. */
  private static final int MOST = 2;

  /** Every crowd of the lease, the largest first. */
  static List<Corner> of(Lease lease, Frame frame) {
    List<List<Thing>> crowds = new ArrayList<>();
    for (Thing thing : Extent.standing(lease).stream().filter(t -> !(t instanceof Well)).toList()) {
      List<List<Thing>> near = crowds.stream().filter(c -> isNear(c, thing, frame)).toList();
      List<Thing> joined = new ArrayList<>();
      near.forEach(joined::addAll);
      joined.add(thing);
      crowds.removeAll(near);
      crowds.add(joined);
    }
    List<List<Thing>> large =
        crowds.stream()
            .filter(c -> c.stream().filter(t -> !(t instanceof Tee)).count() > 1)
            .sorted(Comparator.comparingInt(c -> -c.size()))
            .limit(MOST)
            .toList();
    return large.stream().map(c -> new Corner(title(c), c, around(c, lease))).toList();
  }

  private static boolean isNear(List<Thing> crowd, Thing thing, Frame frame) {
    return crowd.stream().anyMatch(t -> frame.at(t.at()).distance(frame.at(thing.at())) < CLOSE);
  }

  private static String title(List<Thing> things) {
    boolean battery = things.stream().anyMatch(Vessel.class::isInstance);
    return battery
        ? "Battery"
        : things.stream()
            .filter(t -> !(t instanceof Tee))
            .limit(2)
            .map(Thing::name)
            .collect(Collectors.joining(" and "));
  }

  /** The things, and the berms they stand in. */
  private static Rectangle2D around(List<Thing> things, Lease lease) {
    List<MapPoint> places = new ArrayList<>(things.stream().map(Thing::at).toList());
    lease.berms().stream()
        .filter(berm -> things.stream().anyMatch(t -> Outlines.holds(berm, t.at())))
        .forEach(berm -> places.addAll(berm.corners()));
    return Extent.of(places);
  }

  boolean holds(Thing thing) {
    return holds(thing.id());
  }

  boolean holds(String id) {
    return things.stream().anyMatch(t -> t.id().equals(id));
  }

  /** Its outline on a map of the whole lease. */
  Rectangle2D on(Frame frame) {
    Rectangle2D box = null;
    for (Thing thing : things) {
      Rectangle2D symbol =
          Symbol.of(thing, frame.at(thing.at()), frame.scale()).outline().getBounds2D();
      box = box == null ? symbol : box.createUnion(symbol);
    }
    double room = 5;
    return new Rectangle2D.Double(
        box.getX() - room,
        box.getY() - room,
        box.getWidth() + 2 * room,
        box.getHeight() + 2 * room);
  }
}
