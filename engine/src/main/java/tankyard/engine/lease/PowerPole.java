package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Voltage;

/**
 * Where the power company's line ends: transformer, meter and the wires to the motors. No fluid
 * goes there.
 *
 * @param volts between the wires to the motors
 * @param phases of the supply
 */
@RecordBuilder
public record PowerPole(
    String id,
    String name,
    MapPoint at,
    Optional<Elevation> ground,
    Status status,
    Voltage volts,
    Phases phases)
    implements Thing {

  /** How many phases the supply has. */
  public enum Phases {
    ONE("one phase"),
    THREE("three phases");

    private final String words;

    Phases(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  @Override
  public String kind() {
    return "power pole";
  }

  @Override
  public boolean takesLines() {
    return false;
  }

  @Override
  public PowerPole movedTo(MapPoint place) {
    return PowerPoleBuilder.builder(this).at(place).build();
  }

  @Override
  public PowerPole renamed(String newName) {
    return PowerPoleBuilder.builder(this).name(newName).build();
  }

  @Override
  public PowerPole withId(String newId) {
    return PowerPoleBuilder.builder(this).id(newId).build();
  }

  @Override
  public PowerPole withStatus(Status newStatus) {
    return PowerPoleBuilder.builder(this).status(newStatus).build();
  }

  @Override
  public PowerPole withGround(Optional<Elevation> newGround) {
    return PowerPoleBuilder.builder(this).ground(newGround).build();
  }
}
