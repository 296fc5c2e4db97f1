package tankyard.app.edit;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import tankyard.engine.lease.Lease;

/**
 * Every step so far, without limit. A step keeps the lease before and after it; leases share what
 * did not change, so a step costs little, and to undo is to put the earlier lease back.
 */
final class History {
  private final Deque<Step> done = new ArrayDeque<>();
  private final Deque<Step> undone = new ArrayDeque<>();

  private record Step(String name, Lease before, Lease after, Optional<String> gesture) {}

  /** The lease an edit must be applied to: the current one, or the one before its gesture began. */
  Lease base(Edit edit, Lease current) {
    return continues(edit) ? done.element().before() : current;
  }

  void record(Edit edit, Lease before, Lease after) {
    String name = edit.name(before);
    if (continues(edit)) {
      done.pop();
    }
    undone.clear();
    if (!after.equals(before)) {
      done.push(new Step(name, before, after, edit.gesture()));
    }
  }

  private boolean continues(Edit edit) {
    return edit.gesture().isPresent()
        && undone.isEmpty()
        && !done.isEmpty()
        && done.element().gesture().equals(edit.gesture());
  }

  Optional<Lease> undo() {
    return Optional.ofNullable(done.poll())
        .map(
            step -> {
              undone.push(step);
              return step.before();
            });
  }

  Optional<Lease> redo() {
    return Optional.ofNullable(undone.poll())
        .map(
            step -> {
              done.push(step);
              return step.after();
            });
  }

  /** The name of the step undo would take back; empty where there is none. */
  String undoName() {
    return done.isEmpty() ? "" : done.element().name();
  }

  String redoName() {
    return undone.isEmpty() ? "" : undone.element().name();
  }

  void clear() {
    done.clear();
    undone.clear();
  }
}
