package tankyard.app.map.plan;

/**
 * What lies under a point on the screen.
 *
 * @param id of the thing or line; empty for nothing
 * @param index of the corner or of the leg of a line
 */
public record Hit(What what, String id, int index) {
  /** What was hit. */
  public enum What {
    NOTHING,
    THING,
    CORNER,
    LINE
  }

  static final Hit NOTHING = new Hit(What.NOTHING, "", 0);

  public boolean isNothing() {
    return what == What.NOTHING;
  }
}
