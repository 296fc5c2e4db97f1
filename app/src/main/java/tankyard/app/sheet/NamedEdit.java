package tankyard.app.sheet;

import java.util.function.UnaryOperator;
import tankyard.app.edit.Edit;
import tankyard.app.edit.Naming;
import tankyard.engine.lease.Lease;

/**
 * A step named after the thing it is about.
 *
 * @param step the name up to the thing's: "Add a fitting to "
 */
record NamedEdit(String step, String id, UnaryOperator<Lease> change) implements Edit {
  @Override
  public String name(Lease before) {
    return step + Naming.of(before, id);
  }

  @Override
  public Lease apply(Lease before) {
    return change.apply(before);
  }
}
