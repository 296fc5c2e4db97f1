package tankyard.app.edit;

import java.util.function.UnaryOperator;
import tankyard.engine.lease.Lease;

/**
 * Changes a part of the lease that is no thing and no line: site, fluids, practice, a case, a
 * price.
 *
 * @param name the step in the imperative: "Change ground in winter"
 */
public record Change(String name, UnaryOperator<Lease> change) implements Edit {

  public static Change of(String name, UnaryOperator<Lease> change) {
    return new Change(name, change);
  }

  @Override
  public String name(Lease before) {
    return name;
  }

  @Override
  public Lease apply(Lease before) {
    return change.apply(before);
  }
}
