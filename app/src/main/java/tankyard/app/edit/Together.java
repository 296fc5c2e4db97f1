package tankyard.app.edit;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import tankyard.engine.lease.Lease;

/**
 * Several edits as one step. A later one may depend on what the earlier did, so each is made from
 * the lease it finds: a tee dropped on a line first, then a line from a well to that tee.
 */
public record Together(String stepName, List<Function<Lease, Edit>> edits, Optional<String> gesture)
    implements Edit {

  public Together {
    edits = List.copyOf(edits);
  }

  @Override
  public String name(Lease before) {
    return stepName;
  }

  @Override
  public Lease apply(Lease before) {
    Lease lease = before;
    for (Function<Lease, Edit> edit : edits) {
      lease = edit.apply(lease).apply(lease);
    }
    return lease;
  }
}
