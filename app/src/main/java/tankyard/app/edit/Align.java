package tankyard.app.edit;

import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Thing;

/** Lines things up with the first of them, on one easting or on one northing. */
public record Align(List<String> ids, Along along) implements Edit {

  /** What they come to share. */
  public enum Along {
    /** One northing: a row from west to east. */
    ROW,
    /** One easting: a column from south to north. */
    COLUMN
  }

  public Align {
    ids = List.copyOf(ids);
  }

  @Override
  public String name(Lease before) {
    return "Line up " + ids.size() + " things in a " + (along == Along.ROW ? "row" : "column");
  }

  @Override
  public Lease apply(Lease before) {
    List<Thing> things = ids.stream().map(before::thing).flatMap(Optional::stream).toList();
    if (things.size() < 2) {
      throw new EditRefusedException("Pick two things or more to line them up.");
    }
    MapPoint first = things.get(0).at();
    Lease lease = before;
    for (Thing thing : things) {
      double east = along == Along.COLUMN ? first.east().metres() - thing.at().east().metres() : 0;
      double north = along == Along.ROW ? first.north().metres() - thing.at().north().metres() : 0;
      lease = Move.of(List.of(thing.id()), east, north).apply(lease);
    }
    return lease;
  }
}
