package tankyard.app.edit;

import java.util.concurrent.atomic.AtomicLong;

/** Gives every drag or run of keys a key of its own, so that only its own edits join. */
public final class Gesture {
  private static final AtomicLong NEXT = new AtomicLong();

  private Gesture() {}

  public static String start() {
    return "gesture-" + NEXT.incrementAndGet();
  }
}
