package tankyard.app.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tankyard.app.edit.Change;
import tankyard.app.map.plan.MapSpot;
import tankyard.app.map.tools.MapDesk;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.SpotHeight;
import tankyard.engine.units.AmountFormatException;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Elevation;

/** A ground height typed at a place of the map. */
final class GroundNote {
  private final MapDesk desk;
  private final MapSpot spot;

  GroundNote(MapDesk desk, MapSpot spot) {
    this.desk = desk;
    this.spot = desk.snapper().round(spot);
  }

  /** What the map reads there now, to start from. */
  String typed() {
    OptionalDouble known = desk.groundAt(spot);
    return known.isPresent() ? desk.units().print(known.getAsDouble(), Dimension.ELEVATION, 5) : "";
  }

  /** Why it can't be taken, or nothing. */
  Optional<String> take(String text) {
    if (text.isBlank()) {
      return Optional.empty();
    }
    try {
      Elevation ground =
          new Elevation(
              AmountText.parse(text, Dimension.ELEVATION, desk.units().unit(Dimension.ELEVATION)));
      MapPoint at = spot.toMapPoint(desk.lengthUnit());
      boolean done =
          desk.edit(
              Change.of(
                  "Note a ground height",
                  lease -> {
                    List<SpotHeight> heights = new ArrayList<>(lease.spotHeights());
                    heights.removeIf(h -> h.at().equals(at));
                    heights.add(new SpotHeight(at, ground));
                    return lease.withSpotHeights(heights);
                  }));
      return done ? Optional.empty() : Optional.of(desk.refusalProperty().get());
    } catch (AmountFormatException e) {
      return Optional.of(e.getMessage());
    }
  }
}
