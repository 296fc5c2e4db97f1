package tankyard.app.edit;

import java.util.Optional;
import tankyard.engine.lease.Lease;

/** One change to the lease. Edits are the only way to change the document. */
public interface Edit {

  /**
   * The step's name in the Edit menu, in the imperative: "Move Well 9".
   *
   * @param before the lease it is about to change, which knows what things are called
   */
  String name(Lease before);

  /**
   * The changed lease.
   *
   * @throws EditRefusedException saying why it can't be done and what can
   */
  Lease apply(Lease before);

  /**
   * Edits of one gesture (a drag, a run of arrow keys) share a key, and the later takes the place
   * of the earlier: it is applied to the lease as it was before the gesture, and one undo takes
   * back the whole of it.
   */
  default Optional<String> gesture() {
    return Optional.empty();
  }
}
