package tankyard.app.map.tools;

/** A drag under way. Every step is an edit of one gesture, so that one undo takes it all back. */
interface Drag {
  void to(Pointer pointer);

  /** Puts everything back where the drag began. */
  void putBack();
}
