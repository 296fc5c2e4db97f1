package tankyard.app.map.plan;

import java.util.List;

/**
 * A line of one height.
 *
 * @param words the height with its unit, "1,020 ft"
 * @param heavy whether it is every fifth and bears its height
 */
public record ContourLine(String words, boolean heavy, List<MapSpot> spots) {
  public ContourLine {
    spots = List.copyOf(spots);
  }
}
