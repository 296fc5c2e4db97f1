package tankyard.app.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Thing;

/**
 * Sets copies of things beside them, with the lines that run between two of them. A copy gets an id
 * and a name of its own and reads its ground off the map: nobody has shot a height there.
 */
public record Duplicate(List<Thing> things, List<Line> lines, double eastM, double northM)
    implements Edit {

  public Duplicate {
    things = List.copyOf(things);
    lines = List.copyOf(lines);
  }

  /** Of the things picked in a lease, and the lines between two of them. */
  public static Duplicate of(Lease lease, Collection<String> ids, double eastM, double northM) {
    List<Thing> things = lease.things().filter(t -> ids.contains(t.id())).toList();
    List<Line> lines =
        lease.lines().stream().filter(l -> ids.contains(l.from()) && ids.contains(l.to())).toList();
    return new Duplicate(things, lines, eastM, northM);
  }

  @Override
  public String name(Lease before) {
    return "Duplicate " + (things.size() == 1 ? things.get(0).name() : things.size() + " things");
  }

  /** The ids the copies get, in the order of the things. */
  public List<String> newIds(Lease before) {
    return new ArrayList<>(copies(before).values());
  }

  private Map<String, String> copies(Lease before) {
    Map<String, String> newIds = new java.util.LinkedHashMap<>();
    for (Thing thing : things) {
      newIds.put(
          thing.id(),
          Naming.nextId(
              before, ThingKind.of(thing).letters(), new java.util.HashSet<>(newIds.values())));
    }
    return newIds;
  }

  @Override
  public Lease apply(Lease before) {
    Map<String, String> newIds = new HashMap<>(copies(before));
    Lease lease = before;
    for (Thing thing : things) {
      lease =
          lease.with(
              thing
                  .withId(newIds.get(thing.id()))
                  .renamed(Naming.nextName(lease, thing.kind()))
                  .movedTo(thing.at().shifted(eastM, northM))
                  .withGround(Optional.empty()));
    }
    for (Line line : lines) {
      lease =
          lease.with(
              line.withId(Naming.nextId(lease, "L"))
                  .renamed(Naming.nextName(lease, line.service()))
                  .withEnds(newIds.get(line.from()), newIds.get(line.to()))
                  .withRoute(line.route().stream().map(this::copied).toList()));
    }
    return lease;
  }

  private RoutePoint copied(RoutePoint corner) {
    return new RoutePoint(corner.at().shifted(eastM, northM), Optional.empty(), corner.depth());
  }
}
