package tankyard.app.field;

import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * One line from which a new row is made, such as "40 F, 120 cP". It is empty again once the row is
 * there; a row with a value missing never gets into the document.
 */
public final class AddEntry<R> extends TypedEntry<R> {
  private final String prompt;
  private final Function<String, UnaryOperator<R>> reader;

  AddEntry(
      EntryContext<R> context,
      String id,
      String label,
      String why,
      String prompt,
      Function<String, UnaryOperator<R>> reader) {
    super(context, id, label, why);
    this.prompt = prompt;
    this.reader = reader;
  }

  @Override
  public boolean mayBeEmpty() {
    return true;
  }

  @Override
  public boolean isNumber() {
    return false;
  }

  /** Two rows added one after the other are two steps, and the second leaves the first alone. */
  @Override
  String mergeKey() {
    return "";
  }

  @Override
  String print(R whole) {
    return "";
  }

  @Override
  String promptFor(R whole) {
    return prompt;
  }

  @Override
  UnaryOperator<R> read(String typed) {
    return typed.isBlank() ? UnaryOperator.identity() : reader.apply(typed);
  }
}
