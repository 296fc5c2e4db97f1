package tankyard.engine.cli;

/** Something typed, or a file, that can't be used; the message is the one line to print. */
final class UnusableException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private UnusableException(String message, Throwable cause) {
    super(message, cause);
  }

  /**
   * In the form of every complaint.
   *
   * @param place the file or option
   */
  static UnusableException of(String place, String found, String accepted) {
    return because(place, found, accepted, null);
  }

  static UnusableException because(String place, String found, String accepted, Throwable cause) {
    return new UnusableException(place + ": found " + found + "; accepted: " + accepted, cause);
  }
}
