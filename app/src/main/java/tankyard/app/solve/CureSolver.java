package tankyard.app.solve;

import java.util.List;
import tankyard.engine.api.Cancel;
import tankyard.engine.cures.CureBook;
import tankyard.engine.lease.Lease;

/** Works out what would help. Called off the window's thread. */
@FunctionalInterface
public interface CureSolver {

  /**
   * The books of all separators.
   *
   * @param cancel once wanted, whatever is returned or thrown is dropped
   */
  List<CureBook> cures(Lease lease, Cancel cancel);
}
