package tankyard.app.edit;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Thing;

/** Says of things and lines whether they are new, there already, or go away. */
public record SetStatus(List<String> ids, Status status) implements Edit {

  public SetStatus {
    ids = List.copyOf(ids);
  }

  public static SetStatus of(Collection<String> ids, Status status) {
    return new SetStatus(List.copyOf(ids), status);
  }

  @Override
  public String name(Lease before) {
    return "Mark " + Naming.of(before, ids) + " \"" + status.words() + "\"";
  }

  @Override
  public Lease apply(Lease before) {
    Lease lease = before;
    for (String id : ids) {
      Optional<Thing> thing = lease.thing(id);
      Optional<Line> line = lease.line(id);
      if (thing.isPresent()) {
        lease = lease.with(thing.get().withStatus(status));
      } else if (line.isPresent()) {
        lease = lease.with(line.get().withStatus(status));
      }
    }
    return lease;
  }
}
