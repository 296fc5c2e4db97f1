package tankyard.app.edit;

import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;

/** Lays a new line between two things. */
public record Connect(Line line) implements Edit {

  @Override
  public String name(Lease before) {
    return "Connect " + Naming.of(before, line.from()) + " to " + Naming.of(before, line.to());
  }

  @Override
  public Lease apply(Lease before) {
    Places.thing(before, line.from());
    Places.thing(before, line.to());
    if (line.from().equals(line.to())) {
      throw new EditRefusedException(
          "A line can't start and end at "
              + Naming.of(before, line.from())
              + ": end it at another thing.");
    }
    if (Naming.usedIds(before).contains(line.id())) {
      throw new EditRefusedException("The id " + line.id() + " is already used on this lease.");
    }
    return before.with(line);
  }
}
