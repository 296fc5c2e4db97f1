package tankyard.engine.network;

/** A network that can't be worked out; the message says what is wrong with it. */
public final class Unsolved extends RuntimeException {
  private static final long serialVersionUID = 1L;

  Unsolved(String message) {
    super(message);
  }
}
