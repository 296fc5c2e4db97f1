package tankyard.app.field;

import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * The model of a field one types into. What is typed is taken by {@link #commit} and put back by
 * {@link #restore}; until then it stays, whatever the document does.
 */
public abstract sealed class TypedEntry<R> extends Entry<R>
    permits AmountEntry, NameEntry, CountEntry, AddEntry {
  private final StringProperty text = new SimpleStringProperty(this, "text", "");
  private final ReadOnlyStringWrapper prompt = new ReadOnlyStringWrapper(this, "prompt", "");
  private String shown = "";
  private boolean committing;

  TypedEntry(EntryContext<R> context, String id, String label, String why) {
    super(context, id, label, why);
    text.addListener((observable, old, typed) -> onTyped(typed));
  }

  public final StringProperty textProperty() {
    return text;
  }

  /** What holds while nothing is typed: "24 h assumed". */
  public final ReadOnlyStringProperty promptProperty() {
    return prompt.getReadOnlyProperty();
  }

  /** Whether the text differs from what the document holds. */
  public final boolean isDirty() {
    return !text.get().equals(shown);
  }

  /** Whether empty is a value of its own, so that a way to clear the field makes sense. */
  public abstract boolean mayBeEmpty();

  /** Whether it is a number and so stands to the right. */
  public abstract boolean isNumber();

  /** Takes what was typed, or says what is wrong with it. */
  public final void commit() {
    if (!isDirty()) {
      setError("");
      return;
    }
    readOrExplain(text.get()).ifPresent(this::commit);
  }

  /** Puts back what the document holds. */
  public final void restore() {
    text.set(shown);
    setError("");
  }

  /** Empties the field: back to what is assumed. */
  public final void clear() {
    text.set("");
    commit();
  }

  abstract String print(R whole);

  abstract String promptFor(R whole);

  /** The change that takes what was typed; throws IllegalArgumentException with words. */
  abstract UnaryOperator<R> read(String typed);

  @Override
  final void show(R whole) {
    boolean untouched = committing || !isDirty();
    shown = print(whole);
    prompt.set(promptFor(whole));
    if (untouched) {
      text.set(committing ? shown : context().drafts().of(draftKey()).orElse(shown));
    }
    if (isDirty()) {
      readOrExplain(text.get());
    } else {
      setError("");
      context().drafts().drop(draftKey()); // typed as it is printed: no change told us so
    }
  }

  private void commit(UnaryOperator<R> change) {
    committing = true;
    try {
      if (change(change)) {
        text.set(shown); // also where only the wording changed: "12" for "12 ft"
      }
    } finally {
      committing = false;
    }
  }

  private Optional<UnaryOperator<R>> readOrExplain(String typed) {
    try {
      UnaryOperator<R> change = read(typed);
      setError("");
      return Optional.of(change);
    } catch (IllegalArgumentException wrong) {
      setError(wrong.getMessage());
      return Optional.empty();
    }
  }

  private void onTyped(String typed) {
    if (typed.equals(shown)) {
      context().drafts().drop(draftKey());
    } else {
      context().drafts().keep(draftKey(), typed);
    }
    if (!error().isEmpty()) {
      readOrExplain(typed); // the reason goes away as soon as it is mended
    }
  }

  private String draftKey() {
    return context().key(id());
  }
}
