package tankyard.app.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/** Distances along a line's route on the map. */
final class LineLengths {
  private LineLengths() {}

  /**
   * One straight stretch.
   *
   * @param index 0 runs from the line's start to its first corner
   */
  record Stretch(int index, MapPoint from, MapPoint to) {
    double metres() {
      return from.metresTo(to);
    }

    MapPoint middle() {
      return new MapPoint(between(from.east(), to.east()), between(from.north(), to.north()));
    }

    private static Length between(Length a, Length b) {
      Unit unit = a.typed().unit();
      double middle = unit.fromSi((a.metres() + b.metres()) / 2);
      return Length.of(Math.round(middle * 10) / 10.0, unit);
    }
  }

  static String offTheMap(Lease lease, String lineId, UnitSystem units) {
    return lease
        .line(lineId)
        .map(line -> stretches(lease, line).stream().mapToDouble(Stretch::metres).sum())
        .map(metres -> "map: " + units.print(metres, Dimension.LENGTH, 4))
        .orElse("");
  }

  static Stretch longest(Lease lease, Line line) {
    return stretches(lease, line).stream()
        .max(Comparator.comparingDouble(Stretch::metres))
        .orElseThrow();
  }

  /** For example {@code 320 ft}. */
  static String pegName(Line line, int peg, Lease lease, UnitSystem units) {
    double metres =
        stretches(lease, line).stream().limit(peg + 1L).mapToDouble(Stretch::metres).sum();
    return units.print(metres, Dimension.LENGTH, 3);
  }

  private static List<Stretch> stretches(Lease lease, Line line) {
    List<MapPoint> way = new ArrayList<>();
    lease.thing(line.from()).ifPresent(t -> way.add(t.at()));
    line.route().stream().map(RoutePoint::at).forEach(way::add);
    lease.thing(line.to()).ifPresent(t -> way.add(t.at()));
    return IntStream.range(1, way.size())
        .mapToObj(i -> new Stretch(i - 1, way.get(i - 1), way.get(i)))
        .toList();
  }
}
