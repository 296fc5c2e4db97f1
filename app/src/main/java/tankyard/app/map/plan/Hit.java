package tankyard.app.map.plan;

/**
 * What lies under a point on the screen.
 *
 * @param id of what was hit; empty for nothing
 * @param index of the corner, or of the leg of a line or outline
 */
public record Hit(What what, String id, int index) {
  /** What was hit. */
  public enum What {
    NOTHING,
    THING,
    CORNER,
    LINE,
    OUTLINE
  }

  static final Hit NOTHING = new Hit(What.NOTHING, "", 0);

  public boolean isNothing() {
    return what == What.NOTHING;
  }
}
