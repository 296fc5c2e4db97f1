package tankyard.app.map.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Everything the map draws of one lease, apart from the lie of the land. */
public record Plan(
    List<PlanThing> things,
    List<PlanLine> lines,
    List<PlanWire> wires,
    List<PlanMark> marks,
    List<PlanHeight> heights) {
  public Plan {
    things = List.copyOf(things);
    lines = List.copyOf(lines);
    wires = List.copyOf(wires);
    marks = List.copyOf(marks);
    heights = List.copyOf(heights);
  }

  public static Plan empty() {
    return new Plan(List.of(), List.of(), List.of(), List.of(), List.of());
  }

  public Optional<PlanThing> thing(String id) {
    return things.stream().filter(t -> t.id().equals(id)).findFirst();
  }

  public Optional<PlanLine> line(String id) {
    return lines.stream().filter(l -> l.id().equals(id)).findFirst();
  }

  /** The box around all things and lines; without any, around the spot heights. */
  public Optional<MapBox> bounds() {
    List<MapSpot> spots = new ArrayList<>();
    things.forEach(t -> spots.add(t.at()));
    lines.forEach(l -> spots.addAll(l.spots()));
    if (spots.isEmpty()) {
      heights.forEach(h -> spots.add(h.at()));
    }
    return MapBox.around(spots);
  }

  /** The box around one thing or line. */
  public Optional<MapBox> bounds(String id) {
    return thing(id)
        .map(t -> MapBox.between(t.at(), t.at()))
        .or(() -> line(id).flatMap(l -> MapBox.around(l.spots())));
  }

  public String spoken(String id) {
    return thing(id).map(PlanThing::spoken).or(() -> line(id).map(PlanLine::spoken)).orElse("");
  }
}
