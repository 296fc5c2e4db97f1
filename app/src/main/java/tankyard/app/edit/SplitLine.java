package tankyard.app.edit;

import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.LineBuilder;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Tee;

/**
 * Cuts a line in two with a tee. The part upstream of the tee keeps the line's id, name and
 * fittings; the part downstream is a new line of the same pipe. A measured length goes, since
 * nobody measured the parts.
 *
 * @param leg the straight stretch the tee falls on: 0 runs from the line's start to its first
 *     corner
 */
public record SplitLine(String lineId, int leg, Tee tee) implements Edit {

  @Override
  public String name(Lease before) {
    return "Put " + tee.name() + " on " + Naming.of(before, lineId);
  }

  @Override
  public Lease apply(Lease before) {
    Line line = Places.line(before, lineId);
    if (leg < 0 || leg > line.route().size()) {
      throw new EditRefusedException(line.name() + " has no stretch number " + (leg + 1) + ".");
    }
    List<RoutePoint> route = line.route();
    Lease lease = new Place(tee).apply(before);
    Line upstream =
        line.withEnds(line.from(), tee.id())
            .withRoute(route.subList(0, leg))
            .withLength(Optional.empty());
    Line downstream =
        LineBuilder.builder()
            .id(Naming.nextId(lease, "L"))
            .name(Naming.nextName(lease, line.service()))
            .service(line.service())
            .from(tee.id())
            .to(line.to())
            .route(route.subList(leg, route.size()))
            .pipe(line.pipe())
            .slack(line.slack())
            .depth(line.depth())
            .fittings(List.of())
            .status(line.status())
            .build();
    return lease.with(upstream).with(downstream);
  }
}
