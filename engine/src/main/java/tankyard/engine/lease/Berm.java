package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;

/**
 * The bermed pad, its walls taken as upright.
 *
 * @param corners of the ground inside, three or more
 * @param rain the storm the berm must also hold
 * @param freeboard added on top
 * @param largestTankFactor 1 by the federal rule; some states want 1.5
 * @param height as built or as it is to be built, if that is settled
 */
@RecordBuilder
public record Berm(
    String id,
    String name,
    List<MapPoint> corners,
    Status status,
    Optional<Length> rain,
    Optional<Length> freeboard,
    Optional<Fraction> largestTankFactor,
    Optional<Length> height)
    implements Outlined {
  private static final int FEWEST = 3;

  public Berm {
    corners = List.copyOf(corners);
    if (corners.size() < FEWEST) {
      throw new IllegalArgumentException(
          "a berm of " + corners.size() + " corners; it needs " + FEWEST);
    }
  }

  @Override
  public boolean closes() {
    return true;
  }

  @Override
  public int fewestCorners() {
    return FEWEST;
  }

  @Override
  public String kind() {
    return "berm";
  }

  @Override
  public Berm withOutline(List<MapPoint> newCorners) {
    return BermBuilder.builder(this).corners(newCorners).build();
  }

  @Override
  public Berm renamed(String newName) {
    return BermBuilder.builder(this).name(newName).build();
  }

  @Override
  public Berm withId(String newId) {
    return BermBuilder.builder(this).id(newId).build();
  }

  @Override
  public Berm withStatus(Status newStatus) {
    return BermBuilder.builder(this).status(newStatus).build();
  }
}
