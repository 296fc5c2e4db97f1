package tankyard.app.map.tools;

import java.util.List;
import java.util.OptionalDouble;
import tankyard.app.map.plan.MapSpot;
import tankyard.engine.units.Dimension;

/**
 * Says how far it is along some spots, which way the last stretch runs and how the ground rises.
 */
final class Tape {
  private Tape() {}

  static String words(MapDesk desk, List<MapSpot> spots) {
    double metres = 0;
    for (int i = 0; i + 1 < spots.size(); i++) {
      metres += spots.get(i).metresTo(spots.get(i + 1));
    }
    String length = desk.units().print(metres, Dimension.LENGTH, 4);
    return length + rise(desk, spots.get(0), spots.get(spots.size() - 1));
  }

  /** Compass bearing of the last stretch in whole degrees. */
  static String bearing(List<MapSpot> spots) {
    if (spots.size() < 2) {
      return "";
    }
    MapSpot a = spots.get(spots.size() - 2);
    MapSpot b = spots.get(spots.size() - 1);
    double angle = Math.toDegrees(Math.atan2(b.eastM() - a.eastM(), b.northM() - a.northM()));
    return Math.round((angle + 360) % 360) + "\u00b0";
  }

  private static String rise(MapDesk desk, MapSpot from, MapSpot to) {
    OptionalDouble low = desk.groundAt(from);
    OptionalDouble high = desk.groundAt(to);
    if (low.isEmpty() || high.isEmpty()) {
      return "";
    }
    double up = high.getAsDouble() - low.getAsDouble();
    String print = desk.units().print(Math.abs(up), Dimension.LENGTH, 2);
    return Math.abs(up) < 0.05 ? ", level" : (up > 0 ? ", up " : ", down ") + print;
  }
}
