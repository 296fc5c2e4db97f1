package tankyard.app.map.tools;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import tankyard.app.edit.Connect;
import tankyard.app.edit.Edit;
import tankyard.app.edit.Naming;
import tankyard.app.edit.SplitLine;
import tankyard.app.edit.ThingKind;
import tankyard.app.edit.Together;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.plan.Snap;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tee;

/** Lays the drawn line, with the tees its ends need, as one step; then picks it. */
final class LineEdit {
  private final MapDesk desk;
  private final List<Function<Lease, Edit>> edits = new ArrayList<>();
  private final Set<String> newTees = new HashSet<>();
  private final String from;
  private final String to;
  private final List<RoutePoint> route;

  LineEdit(MapDesk desk, LineEnd start, List<MapSpot> corners, LineEnd end) {
    this.desk = desk;
    from = idAt(start);
    to = idAt(end);
    route = corners.stream().map(c -> RoutePoint.at(c.toMapPoint(desk.lengthUnit()))).toList();
  }

  private String idAt(LineEnd end) {
    if (end.thingId().isPresent()) {
      return end.thingId().get();
    }
    Snap.OnLine on = end.line().orElseThrow();
    String id = Naming.nextId(desk.lease(), ThingKind.TEE.letters(), newTees);
    newTees.add(id);
    edits.add(
        lease -> {
          String name = Naming.nextName(lease, ThingKind.TEE.words());
          Tee tee =
              new Tee(
                  id, name, end.at().toMapPoint(desk.lengthUnit()), Optional.empty(), Status.NEW);
          return new SplitLine(on.lineId(), on.leg(), tee);
        });
    return id;
  }

  boolean run() {
    edits.add(lease -> new Connect(desk.blanks().line(lease, from, to, route)));
    if (!desk.edit(new Together(name(), edits, Optional.empty()))) {
      return false;
    }
    List<Line> lines = desk.lease().lines();
    desk.selection().select(lines.get(lines.size() - 1).id());
    return true;
  }

  private String name() {
    Lease lease = desk.lease();
    String at = newTees.isEmpty() ? "" : newTees.size() == 1 ? ", with a tee" : ", with two tees";
    return "Draw a line from " + nameOf(lease, from) + " to " + nameOf(lease, to) + at;
  }

  private String nameOf(Lease lease, String id) {
    return newTees.contains(id) ? "a line" : Naming.of(lease, id);
  }
}
