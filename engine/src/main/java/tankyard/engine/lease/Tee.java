package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Elevation;

/** Where flow lines meet. */
@RecordBuilder
public record Tee(String id, String name, MapPoint at, Optional<Elevation> ground, Status status)
    implements Thing {

  @Override
  public String kind() {
    return "tee";
  }

  @Override
  public Tee movedTo(MapPoint place) {
    return TeeBuilder.builder(this).at(place).build();
  }

  @Override
  public Tee renamed(String newName) {
    return TeeBuilder.builder(this).name(newName).build();
  }

  @Override
  public Tee withId(String newId) {
    return TeeBuilder.builder(this).id(newId).build();
  }

  @Override
  public Tee withStatus(Status newStatus) {
    return TeeBuilder.builder(this).status(newStatus).build();
  }

  @Override
  public Tee withGround(Optional<Elevation> newGround) {
    return TeeBuilder.builder(this).ground(newGround).build();
  }
}
