package tankyard.app.sheet;

import java.util.List;
import java.util.Optional;
import tankyard.app.edit.Move;
import tankyard.app.field.Part;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Thing;
import tankyard.engine.units.Amount;
import tankyard.engine.units.Length;

/** Where the sheet's values lie in the lease. */
final class LeasePlaces {
  private LeasePlaces() {}

  static Part<Lease, Lease> whole() {
    return new Part<>(lease -> lease, (lease, other) -> other);
  }

  static <T extends Thing> Part<Lease, T> thing(String id, Class<T> kind) {
    return new Part<>(
        lease -> kind.cast(lease.thing(id).orElseThrow()), (lease, thing) -> lease.with(thing));
  }

  static Part<Lease, Line> line(String id) {
    return new Part<>(lease -> lease.line(id).orElseThrow(), (lease, line) -> lease.with(line));
  }

  /** East or north of a thing. Changing it moves the thing as a drag would, heights left behind. */
  static Part<Lease, Optional<Amount>> east(String id) {
    return new Part<>(
        lease -> Optional.of(at(lease, id).east().typed()),
        (lease, typed) -> {
          Length to = new Length(typed.orElseThrow());
          MapPoint from = at(lease, id);
          return moved(lease, id, new MapPoint(to, from.north()));
        });
  }

  static Part<Lease, Optional<Amount>> north(String id) {
    return new Part<>(
        lease -> Optional.of(at(lease, id).north().typed()),
        (lease, typed) -> {
          Length to = new Length(typed.orElseThrow());
          MapPoint from = at(lease, id);
          return moved(lease, id, new MapPoint(from.east(), to));
        });
  }

  private static MapPoint at(Lease lease, String id) {
    return lease.thing(id).orElseThrow().at();
  }

  /** The last step keeps the place in the unit it was typed in. */
  private static Lease moved(Lease lease, String id, MapPoint to) {
    MapPoint from = at(lease, id);
    Lease there =
        Move.of(
                List.of(id),
                to.east().metres() - from.east().metres(),
                to.north().metres() - from.north().metres())
            .apply(lease);
    return there.with(there.thing(id).orElseThrow().movedTo(to));
  }
}
