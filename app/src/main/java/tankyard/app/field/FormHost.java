package tankyard.app.field;

import java.util.function.UnaryOperator;
import tankyard.engine.units.UnitSystem;

/**
 * What takes the changes a form makes.
 *
 * @param <R> the whole that is changed
 */
public interface FormHost<R> {
  /**
   * Makes one change.
   *
   * @param name of the step, for undo: "Oil of Well 3"
   * @param mergeKey changes with the same key may become one step; empty for a step of its own
   * @throws IllegalArgumentException with words for the reader where the change is refused
   */
  void change(String name, String mergeKey, UnaryOperator<R> change);

  /** What a bare number is taken in where the field shows none. */
  UnitSystem units();
}
