package tankyard.app.sheet;

import java.util.List;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Thing;

/**
 * What stands above the fields.
 *
 * @param title name of what is picked
 * @param kind the trade's word for it
 * @param facts what can't be changed here, a sentence each
 */
record SheetHead(String title, String kind, List<String> facts) {
  SheetHead {
    facts = List.copyOf(facts);
  }

  static SheetHead of(Lease lease, List<String> ids) {
    if (ids.size() > 1) {
      return new SheetHead(ids.size() + " picked", SeveralSheet.count(lease, ids), List.of());
    }
    String id = ids.isEmpty() ? "" : ids.get(0);
    return lease
        .thing(id)
        .map(thing -> new SheetHead(thing.name(), thing.kind(), List.of()))
        .or(() -> lease.line(id).map(line -> of(lease, line)))
        .orElseGet(() -> new SheetHead(lease.name(), "lease", LeaseSheet.facts(lease)));
  }

  private static SheetHead of(Lease lease, Line line) {
    String way = "From " + name(lease, line.from()) + " to " + name(lease, line.to()) + ".";
    return new SheetHead(line.name(), line.kind(), List.of(way));
  }

  private static String name(Lease lease, String thingId) {
    return lease.thing(thingId).map(Thing::name).orElse(thingId);
  }
}
