package tankyard.engine.api;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/** Lets whoever asked for an answer call it off. */
@FunctionalInterface
public interface Cancel {
  /** Never called off. */
  Cancel NEVER = () -> false;

  boolean isWanted();

  static Cancel when(BooleanSupplier wanted) {
    return wanted::getAsBoolean;
  }

  /** Stops the work between two of its steps. */
  default void check() {
    if (isWanted()) {
      throw new CancellationException("called off");
    }
  }
}
