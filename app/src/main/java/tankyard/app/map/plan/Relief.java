package tankyard.app.map.plan;

import java.util.List;

/**
 * The lie of the land for drawing: areas that stand one above the other, and contour lines.
 *
 * @param terraces from the lowest up; each covers all ground at or above its height, so the later
 *     are painted over the earlier
 */
public record Relief(List<Terrace> terraces, List<ContourLine> contours) {
  public Relief {
    terraces = List.copyOf(terraces);
    contours = List.copyOf(contours);
  }

  /**
   * All ground at or above a height.
   *
   * @param share of the way from the lowest to the highest ground
   * @param faces flat polygons that make it up
   */
  public record Terrace(double share, List<List<MapSpot>> faces) {
    public Terrace {
      faces = List.copyOf(faces);
    }
  }

  public static Relief flat() {
    return new Relief(List.of(), List.of());
  }
}
