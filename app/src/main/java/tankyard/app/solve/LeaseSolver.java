package tankyard.app.solve;

import tankyard.engine.api.Cancel;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.lease.Lease;

/** Works a lease out. Called off the window's thread. */
@FunctionalInterface
public interface LeaseSolver {

  /**
   * The answer.
   *
   * @param cancel once wanted, whatever is returned or thrown is dropped
   */
  LeaseAnswer solve(Lease lease, Cancel cancel);
}
