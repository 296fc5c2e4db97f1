package tankyard.app.edit;

import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Thing;

/** Puts a new thing on the map. */
public record Place(Thing thing) implements Edit {

  @Override
  public String name(Lease before) {
    return "Place " + thing.name();
  }

  @Override
  public Lease apply(Lease before) {
    if (Naming.usedIds(before).contains(thing.id())) {
      throw new EditRefusedException("The id " + thing.id() + " is already used on this lease.");
    }
    return before.with(thing);
  }
}
