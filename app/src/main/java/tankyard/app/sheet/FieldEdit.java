package tankyard.app.sheet;

import java.util.Optional;
import java.util.function.UnaryOperator;
import tankyard.app.edit.Edit;
import tankyard.engine.lease.Lease;

/**
 * A field was filled in.
 *
 * @param step name in the Edit menu: "Change oil of Well 9"
 * @param field edits of the same field, one after the other, are one step; empty for none
 */
record FieldEdit(String step, String field, UnaryOperator<Lease> change) implements Edit {
  @Override
  public String name(Lease before) {
    return step;
  }

  @Override
  public Lease apply(Lease before) {
    return change.apply(before);
  }

  @Override
  public Optional<String> gesture() {
    return field.isEmpty() ? Optional.empty() : Optional.of("field " + field);
  }
}
