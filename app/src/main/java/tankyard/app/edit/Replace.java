package tankyard.app.edit;

import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Thing;

/**
 * Puts a changed thing or line in the place of the one with its id, as the sheet does when a field
 * is filled in.
 *
 * @param what the field in words: "oil rate"
 */
public final class Replace implements Edit {
  private final String id;
  private final String what;
  private final java.util.function.UnaryOperator<Lease> change;

  private Replace(String id, String what, java.util.function.UnaryOperator<Lease> change) {
    this.id = id;
    this.what = what;
    this.change = change;
  }

  public static Replace of(Thing changed, String what) {
    return new Replace(
        changed.id(),
        what,
        before -> {
          Places.thing(before, changed.id());
          return before.with(changed);
        });
  }

  public static Replace of(Line changed, String what) {
    return new Replace(
        changed.id(),
        what,
        before -> {
          Places.line(before, changed.id());
          return before.with(changed);
        });
  }

  @Override
  public String name(Lease before) {
    return "Change " + what + " of " + Naming.of(before, id);
  }

  @Override
  public Lease apply(Lease before) {
    return change.apply(before);
  }
}
