package tankyard.app.field;

import java.util.function.UnaryOperator;

/** A whole number between two limits. */
public final class CountEntry<R> extends TypedEntry<R> {
  private final Part<R, Integer> part;
  private final int least;
  private final int most;

  CountEntry(
      EntryContext<R> context,
      String id,
      String label,
      String why,
      Part<R, Integer> part,
      int least,
      int most) {
    super(context, id, label, why);
    this.part = part;
    this.least = least;
    this.most = most;
  }

  @Override
  public boolean mayBeEmpty() {
    return false;
  }

  @Override
  public boolean isNumber() {
    return true;
  }

  @Override
  String print(R whole) {
    return Integer.toString(part.in(whole));
  }

  @Override
  String promptFor(R whole) {
    return "needed";
  }

  @Override
  UnaryOperator<R> read(String typed) {
    String digits = typed.strip();
    if (!digits.matches("\\d{1,9}")
        || Integer.parseInt(digits) < least
        || Integer.parseInt(digits) > most) {
      throw new IllegalArgumentException(
          "\"" + digits + "\" can't be taken. A whole number from " + least + " to " + most + ".");
    }
    int count = Integer.parseInt(digits);
    return whole -> part.with(whole, count);
  }
}
