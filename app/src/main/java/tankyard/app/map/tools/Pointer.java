package tankyard.app.map.tools;

/**
 * Where the pointer is on the map's drawing area, and what is held down with it.
 *
 * @param clicks 2 for the second press of a double click
 */
public record Pointer(double x, double y, boolean shift, boolean control, int clicks) {
  /** Less than this is a shaky hand and no drag. */
  private static final double DRAG_PX = 4;

  public static Pointer at(double x, double y) {
    return new Pointer(x, y, false, false, 1);
  }

  boolean draggedFrom(Pointer press) {
    return Math.hypot(x - press.x, y - press.y) >= DRAG_PX;
  }
}
