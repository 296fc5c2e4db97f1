package tankyard.app.solve;

import java.util.function.BooleanSupplier;
import tankyard.engine.lease.Lease;

/** Works a lease out. Called off the window's thread. */
@FunctionalInterface
public interface LeaseSolver {

  /**
   * The answer.
   *
   * @param cancelled asked now and then; once true the answer is no longer wanted, and whatever is
   *     returned or thrown is dropped
   */
  LeaseAnswer solve(Lease lease, BooleanSupplier cancelled);
}
