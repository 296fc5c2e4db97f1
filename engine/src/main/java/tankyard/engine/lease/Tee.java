package tankyard.engine.lease;

import java.util.Optional;
import tankyard.engine.units.Elevation;

/** Where flow lines meet. */
public record Tee(String id, String name, MapPoint at, Optional<Elevation> ground, Status status)
    implements Thing {

  @Override
  public String kind() {
    return "tee";
  }

  @Override
  public Tee movedTo(MapPoint place) {
    return new Tee(id, name, place, ground, status);
  }

  @Override
  public Tee renamed(String newName) {
    return new Tee(id, newName, at, ground, status);
  }

  @Override
  public Tee withId(String newId) {
    return new Tee(newId, name, at, ground, status);
  }

  @Override
  public Tee withStatus(Status newStatus) {
    return new Tee(id, name, at, ground, newStatus);
  }

  @Override
  public Tee withGround(Optional<Elevation> newGround) {
    return new Tee(id, name, at, newGround, status);
  }
}
