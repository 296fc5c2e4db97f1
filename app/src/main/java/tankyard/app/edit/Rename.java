package tankyard.app.edit;

import tankyard.engine.lease.Lease;

/** Gives a thing or a line another name. Two may share one: names are for people, ids for files. */
public record Rename(String id, String newName) implements Edit {

  @Override
  public String name(Lease before) {
    return "Rename " + Naming.of(before, id);
  }

  @Override
  public Lease apply(Lease before) {
    String name = newName.strip();
    if (name.isEmpty()) {
      throw new EditRefusedException(
          Naming.of(before, id) + " needs a name: type at least one letter.");
    }
    return before
        .thing(id)
        .map(thing -> before.with(thing.renamed(name)))
        .orElseGet(() -> before.with(Places.line(before, id).renamed(name)));
  }
}
