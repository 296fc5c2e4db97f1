package tankyard.app.map.plan;

/** A tag on what sets one end of the window: "gauge at least 12.3 psi", "gauge at most 31 psi". */
public record Badge(End end, String words) {
  /** Which end of the window. */
  public enum End {
    LEAST,
    MOST
  }
}
