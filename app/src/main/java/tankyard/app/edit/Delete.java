package tankyard.app.edit;

import java.util.Collection;
import java.util.List;
import tankyard.engine.lease.Lease;

/** Takes things and lines out; a line goes with either of its ends. */
public record Delete(List<String> ids) implements Edit {

  public Delete {
    ids = List.copyOf(ids);
  }

  public static Delete of(Collection<String> ids) {
    return new Delete(List.copyOf(ids));
  }

  @Override
  public String name(Lease before) {
    long gone =
        before.lines().stream()
            .filter(l -> !ids.contains(l.id()))
            .filter(l -> ids.contains(l.from()) || ids.contains(l.to()))
            .count();
    String with = gone == 0 ? "" : gone == 1 ? " and its line" : " and " + gone + " lines";
    return "Delete " + Naming.of(before, ids) + with;
  }

  @Override
  public Lease apply(Lease before) {
    Lease lease = before;
    for (String id : ids) {
      lease = lease.without(id);
    }
    return lease;
  }
}
