package tankyard.app.map.tools;

/**
 * What presses on the map mean while something is in hand. A tool is a small state machine: it
 * shows a ghost while a gesture is under way and makes one edit at its end.
 */
public interface Tool {

  /** What to do next, for the status bar. */
  String hint();

  default void press(Pointer pointer) {}

  default void drag(Pointer pointer) {}

  default void release(Pointer pointer) {}

  /** The pointer moves with no button down. */
  default void move(Pointer pointer) {}

  /** Ends the gesture where it is, as Enter does. */
  default void finish() {}

  /** Takes back the last point of the gesture. */
  default void back() {}

  /** Gives up the gesture under way; false where there was none. */
  default boolean giveUp() {
    return false;
  }
}
