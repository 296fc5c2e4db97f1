package tankyard.engine.lease;

import java.util.Optional;
import tankyard.engine.units.Elevation;

/**
 * Anything that stands on the map; lines connect all but power poles and what is {@link Outlined}.
 */
public sealed interface Thing
    permits MotorDriven, Tee, Vessel, Tank, InjectionWell, PowerPole, Outlined {

  /** Stable and unique over the whole lease, lines and cases included. */
  String id();

  String name();

  MapPoint at();

  /** The ground where it stands, if it was shot; otherwise it is read off the map's heights. */
  Optional<Elevation> ground();

  Status status();

  /** The trade's word for its kind: "well", "oil tank". */
  String kind();

  /** Whether a line can end at it. */
  default boolean takesLines() {
    return true;
  }

  Thing movedTo(MapPoint place);

  Thing renamed(String newName);

  Thing withId(String newId);

  Thing withStatus(Status newStatus);

  Thing withGround(Optional<Elevation> newGround);
}
