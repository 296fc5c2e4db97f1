package tankyard.engine.verification;

/**
 * Where an example comes from.
 *
 * @param known how its numbers are known: read, second-hand, memory or own
 */
public record CheckExample(
    String id, String title, String inputs, String source, String known, String note) {
  public CheckExample {
    if (!known.matches("read|second-hand|memory|own")) {
      throw new IllegalArgumentException(id + ": known must not be \"" + known + "\"");
    }
  }
}
