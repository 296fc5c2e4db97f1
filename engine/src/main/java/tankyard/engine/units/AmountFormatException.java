package tankyard.engine.units;

/** What was typed can't be read as an amount. The message says what was typed and what is taken. */
public final class AmountFormatException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  AmountFormatException(String message) {
    super(message);
  }
}
