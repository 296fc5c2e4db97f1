package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Length;

/**
 * What a battery must keep its distance from, and is no part of: a house, a creek, a road.
 *
 * @param corners of its outline, or the bends of a way; a single one is a spot on the map
 * @param what it is
 * @param setback how far tanks and vessels must stand from it by the local rule, if that was looked
 *     up
 */
@RecordBuilder
public record Landmark(
    String id,
    String name,
    List<MapPoint> corners,
    Status status,
    What what,
    Optional<Length> setback)
    implements Outlined {

  /** What it is. */
  public enum What {
    HOUSE("house", true, false),
    CREEK("creek", false, true),
    POND("pond", true, true),
    WATER_WELL("water well", true, true),
    ROAD("road", false, false),
    PROPERTY_LINE("property line", false, false);

    private final String words;
    private final boolean covers;
    private final boolean water;

    What(String words, boolean covers, boolean water) {
      this.words = words;
      this.covers = covers;
      this.water = water;
    }

    /** Whether a spill must not come there for the water's sake. */
    public boolean isWater() {
      return water;
    }

    public String words() {
      return words;
    }
  }

  public Landmark {
    corners = List.copyOf(corners);
    if (corners.isEmpty()) {
      throw new IllegalArgumentException("a landmark without a corner; it needs one");
    }
  }

  /** A house covers ground, a road only passes. */
  @Override
  public boolean closes() {
    return what.covers && corners.size() > 2;
  }

  @Override
  public int fewestCorners() {
    return 1;
  }

  @Override
  public String kind() {
    return "landmark";
  }

  @Override
  public Landmark withOutline(List<MapPoint> newCorners) {
    return LandmarkBuilder.builder(this).corners(newCorners).build();
  }

  @Override
  public Landmark renamed(String newName) {
    return LandmarkBuilder.builder(this).name(newName).build();
  }

  @Override
  public Landmark withId(String newId) {
    return LandmarkBuilder.builder(this).id(newId).build();
  }

  @Override
  public Landmark withStatus(Status newStatus) {
    return LandmarkBuilder.builder(this).status(newStatus).build();
  }
}
