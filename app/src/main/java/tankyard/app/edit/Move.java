package tankyard.app.edit;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Thing;

/**
 * Shifts things and lines together. A line between two shifted things goes along, corners and all;
 * a line with one end among them keeps its corners and stretches. A line picked by itself shifts
 * its corners. What was measured at the old place is kept true as {@link Places} says.
 *
 * @param eastM how far, over the whole gesture
 * @param northM how far, over the whole gesture
 */
public record Move(List<String> ids, double eastM, double northM, Optional<String> gesture)
    implements Edit {

  public Move {
    ids = List.copyOf(ids);
  }

  public static Move of(Collection<String> ids, double eastM, double northM) {
    return new Move(List.copyOf(ids), eastM, northM, Optional.empty());
  }

  public Move in(String gestureKey) {
    return new Move(ids, eastM, northM, Optional.of(gestureKey));
  }

  @Override
  public String name(Lease before) {
    return "Move " + Naming.of(before, ids);
  }

  @Override
  public Lease apply(Lease before) {
    Lease lease = before;
    for (String id : ids) {
      Optional<Thing> thing = before.thing(id);
      if (thing.isPresent()) {
        lease = Places.moveThing(lease, thing.get(), thing.get().at().shifted(eastM, northM));
      }
    }
    for (Line line : before.lines()) {
      lease = moveLine(lease, line);
    }
    return lease;
  }

  private Lease moveLine(Lease start, Line line) {
    boolean bothEnds = ids.contains(line.from()) && ids.contains(line.to());
    boolean oneEnd = ids.contains(line.from()) || ids.contains(line.to());
    boolean cornersGo = bothEnds || ids.contains(line.id());
    Lease lease = start;
    if (cornersGo) {
      for (int i = 0; i < line.route().size(); i++) {
        Line sofar = lease.line(line.id()).orElseThrow();
        lease =
            Places.moveCorner(lease, sofar, i, sofar.route().get(i).at().shifted(eastM, northM));
      }
    }
    boolean still = eastM == 0 && northM == 0;
    boolean reshaped = !bothEnds && (oneEnd || cornersGo && !line.route().isEmpty());
    return reshaped && !still ? Places.measureAnew(lease, line.id()) : lease;
  }
}
