package tankyard.app.field;

import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** A name or a note: any words, on one line or on several. */
public final class NameEntry<R> extends TypedEntry<R> {
  private final Part<R, String> part;
  private boolean required;
  private boolean manyLines;
  private boolean number;
  private String prompt = "";
  private Consumer<String> check = words -> {};

  NameEntry(EntryContext<R> context, String id, String label, String why, Part<R, String> part) {
    super(context, id, label, why);
    this.part = part;
  }

  public NameEntry<R> required() {
    required = true;
    return this;
  }

  public NameEntry<R> manyLines() {
    manyLines = true;
    return this;
  }

  /** Words that hold a number, such as "2000 ft": they stand to the right. */
  public NameEntry<R> number() {
    number = true;
    return this;
  }

  /** Refuses words by throwing IllegalArgumentException with the reason. */
  public NameEntry<R> check(Consumer<String> refusing) {
    check = refusing;
    return this;
  }

  public NameEntry<R> prompt(String words) {
    prompt = words;
    return this;
  }

  public boolean hasManyLines() {
    return manyLines;
  }

  @Override
  public boolean mayBeEmpty() {
    return !required;
  }

  @Override
  public boolean isNumber() {
    return number;
  }

  @Override
  String print(R whole) {
    return part.in(whole);
  }

  @Override
  String promptFor(R whole) {
    return required ? "needed" : prompt;
  }

  @Override
  UnaryOperator<R> read(String typed) {
    String words = typed.strip();
    if (required && words.isEmpty()) {
      throw new IllegalArgumentException("Nothing typed. A name is needed, in any words.");
    }
    if (!words.isEmpty()) {
      check.accept(words);
    }
    return whole -> part.with(whole, words);
  }
}
