package tankyard.engine.quick;

/** One line: which input, what was found, what is taken. */
public final class QuickInputException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  public QuickInputException(String message) {
    super(message);
  }

  QuickInputException(String message, Throwable cause) {
    super(message, cause);
  }

  /** About one input. */
  public static QuickInputException of(String input, String message) {
    return new QuickInputException("--" + input + ": " + message);
  }
}
