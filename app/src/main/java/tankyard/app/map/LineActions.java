package tankyard.app.map;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import tankyard.app.edit.AddCorner;
import tankyard.app.edit.NextCorner;
import tankyard.app.edit.RemoveCorner;
import tankyard.app.edit.Replace;
import tankyard.app.edit.SplitLine;
import tankyard.app.edit.ThingKind;
import tankyard.app.map.plan.Cornered;
import tankyard.app.map.plan.HitTester;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.tools.MapDesk;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Tee;

/** What can be done to a line or an outline at a point of it. */
final class LineActions {
  private final MapDesk desk;

  LineActions(MapDesk desk) {
    this.desk = desk;
  }

  void addCorner(String id, int leg, double x, double y) {
    MapPoint at = desk.snapper().round(foot(id, leg, x, y)).toMapPoint(desk.lengthUnit());
    int corner = desk.plan().cornered(id).orElseThrow().cornerOn(leg);
    desk.edit(new AddCorner(id, corner, at, Optional.empty()));
  }

  void addCornerAfter(String id, int corner) {
    desk.edit(NextCorner.after(desk.lease(), id, corner));
  }

  void removeCorner(String id, int corner) {
    desk.edit(new RemoveCorner(id, corner));
  }

  void putTee(String lineId, int leg, double x, double y) {
    MapPoint at = foot(lineId, leg, x, y).toMapPoint(desk.lengthUnit());
    Tee tee = (Tee) desk.blanks().thing(desk.lease(), ThingKind.TEE, at);
    if (desk.edit(new SplitLine(lineId, leg, tee))) {
      desk.selection().select(tee.id());
    }
  }

  /** Swaps the ends of a line that was drawn the wrong way round. */
  void turnAround(String lineId) {
    Line line = desk.lease().line(lineId).orElseThrow();
    List<RoutePoint> route = new ArrayList<>(line.route());
    Collections.reverse(route);
    desk.edit(Replace.of(line.withEnds(line.to(), line.from()).withRoute(route), "the way"));
  }

  private MapSpot foot(String id, int leg, double x, double y) {
    Cornered way = desk.plan().cornered(id).orElseThrow();
    return new HitTester(desk.plan(), desk.camera()).foot(way, leg, x, y);
  }
}
