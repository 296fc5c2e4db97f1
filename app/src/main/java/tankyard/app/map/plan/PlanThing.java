package tankyard.app.map.plan;

import java.util.List;
import tankyard.app.edit.ThingKind;
import tankyard.engine.lease.Status;

/**
 * A thing as the map draws it.
 *
 * @param lengthM east to west on the ground; 0 for what has no size on a map
 * @param widthM south to north on the ground
 * @param notes results shown below its name
 * @param badges what it governs
 * @param spoken all of it in words, for a screen reader
 */
public record PlanThing(
    String id,
    String name,
    ThingKind kind,
    MapSpot at,
    double lengthM,
    double widthM,
    Status status,
    List<String> notes,
    List<Badge> badges,
    String spoken) {
  public PlanThing {
    notes = List.copyOf(notes);
    badges = List.copyOf(badges);
  }
}
