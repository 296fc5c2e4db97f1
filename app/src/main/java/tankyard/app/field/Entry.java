package tankyard.app.field;

import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * The model of one field: its label, why it matters, and what is wrong with it.
 *
 * @param <R> the whole the field's value is a part of
 */
public abstract sealed class Entry<R> permits TypedEntry, ChoiceEntry {
  private final EntryContext<R> context;
  private final String id;
  private final String label;
  private final String why;
  private boolean wide;
  private final ReadOnlyStringWrapper error = new ReadOnlyStringWrapper(this, "error", "");

  Entry(EntryContext<R> context, String id, String label, String why) {
    this.context = context;
    this.id = id;
    this.label = label;
    this.why = why;
  }

  /** Also the id of the control: "well-oil". */
  public final String id() {
    return id;
  }

  public final String label() {
    return label;
  }

  /** What the value does to the design, in a sentence. */
  public final String why() {
    return why;
  }

  /** For long values: the field takes the whole width, below its label. */
  public final Entry<R> wide() {
    wide = true;
    return this;
  }

  final boolean isWide() {
    return wide;
  }

  /** What is wrong with what was typed; empty while nothing is. */
  public final ReadOnlyStringProperty errorProperty() {
    return error.getReadOnlyProperty();
  }

  public final String error() {
    return error.get();
  }

  /** Shows the value as it stands in the document now. */
  abstract void show(R whole);

  final EntryContext<R> context() {
    return context;
  }

  /**
   * Changes of one field, one after the other, may become one step; empty where each is its own.
   */
  String mergeKey() {
    return context.key(id);
  }

  final void setError(String words) {
    error.set(words);
  }

  /** Makes the change; a refusal becomes the field's error. */
  final boolean change(UnaryOperator<R> change) {
    try {
      context.host().change(context.editName(label), mergeKey(), change);
      setError("");
      return true;
    } catch (IllegalArgumentException refused) {
      setError(refused.getMessage());
      return false;
    }
  }
}
