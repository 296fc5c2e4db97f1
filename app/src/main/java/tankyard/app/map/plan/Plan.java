package tankyard.app.map.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Everything the map draws of one lease, apart from the lie of the land. */
public record Plan(
    List<PlanThing> things,
    List<PlanLine> lines,
    List<PlanOutline> outlines,
    List<PlanWire> wires,
    List<PlanMark> marks,
    List<PlanHeight> heights) {
  public Plan {
    things = List.copyOf(things);
    lines = List.copyOf(lines);
    outlines = List.copyOf(outlines);
    wires = List.copyOf(wires);
    marks = List.copyOf(marks);
    heights = List.copyOf(heights);
  }

  public static Plan empty() {
    return new Plan(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
  }

  public Optional<PlanThing> thing(String id) {
    return things.stream().filter(t -> t.id().equals(id)).findFirst();
  }

  public Optional<PlanLine> line(String id) {
    return lines.stream().filter(l -> l.id().equals(id)).findFirst();
  }

  public Optional<PlanOutline> outline(String id) {
    return outlines.stream().filter(o -> o.id().equals(id)).findFirst();
  }

  /** The line or outline of that id. */
  public Optional<Cornered> cornered(String id) {
    return line(id).<Cornered>map(l -> l).or(() -> outline(id));
  }

  /** Where a thing is taken hold of: its middle, or the first corner of an outline. */
  public Optional<MapSpot> hold(String id) {
    return thing(id).map(PlanThing::at).or(() -> outline(id).map(o -> o.corner(0)));
  }

  /** The box around all that is drawn; without any, around the spot heights. */
  public Optional<MapBox> bounds() {
    List<MapSpot> spots = new ArrayList<>();
    things.forEach(t -> spots.add(t.at()));
    lines.forEach(l -> spots.addAll(l.spots()));
    outlines.forEach(o -> spots.addAll(o.spots()));
    if (spots.isEmpty()) {
      heights.forEach(h -> spots.add(h.at()));
    }
    return MapBox.around(spots);
  }

  /** The box around one thing, line or outline. */
  public Optional<MapBox> bounds(String id) {
    return thing(id)
        .map(t -> MapBox.between(t.at(), t.at()))
        .or(() -> line(id).flatMap(l -> MapBox.around(l.spots())))
        .or(() -> outline(id).flatMap(o -> MapBox.around(o.spots())));
  }

  public String spoken(String id) {
    return thing(id)
        .map(PlanThing::spoken)
        .or(() -> line(id).map(PlanLine::spoken))
        .or(() -> outline(id).map(PlanOutline::spoken))
        .orElse("");
  }
}
