package tankyard.app.map.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tankyard.app.edit.ThingKind;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.Landmark;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Outlined;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.SpotHeight;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Thing;
import tankyard.engine.study.Outlines;
import tankyard.engine.units.UnitSystem;

/** Makes the plan of a lease, with the results of one design case where there are any. */
public final class PlanMaker {
  private final Lease lease;
  private final Map<String, Thing> things;
  private final UnitSystem units;
  private final PlanResults results;

  private PlanMaker(Lease lease, UnitSystem units, PlanResults results) {
    this.lease = lease;
    this.things = lease.things().collect(Collectors.toMap(Thing::id, Function.identity()));
    this.units = units;
    this.results = results;
  }

  /**
   * The plan.
   *
   * @param answer may be of an earlier lease: an id it does not know has no results
   */
  public static Plan of(
      Lease lease, Optional<LeaseAnswer> answer, String caseId, UnitSystem units) {
    PlanResults results = new PlanResults(answer, caseId, units);
    return new PlanMaker(lease, units, results).make();
  }

  private Plan make() {
    List<PlanLine> lines =
        lease.lines().stream().map(this::line).flatMap(Optional::stream).toList();
    List<PlanMark> marks = lines.stream().flatMap(l -> results.marks(l).stream()).toList();
    return new Plan(
        lease.things().filter(t -> !(t instanceof Outlined)).map(this::thing).toList(),
        lines,
        lease.outlines().map(this::outline).toList(),
        lease.motorDriven().flatMap(this::wire).toList(),
        marks,
        lease.spotHeights().stream().map(this::height).toList());
  }

  private Stream<PlanWire> wire(Thing motor) {
    return lease.poleNearest(motor.at()).stream()
        .map(
            pole ->
                new PlanWire(pole.id(), MapSpot.of(pole.at()), motor.id(), MapSpot.of(motor.at())));
  }

  private PlanOutline outline(Outlined thing) {
    return new PlanOutline(
        thing.id(),
        thing.name(),
        ThingKind.of(thing),
        thing.corners().stream().map(MapSpot::of).toList(),
        thing.closes(),
        thing instanceof Landmark l && l.what().isWater(),
        thing.status(),
        thing instanceof Landmark l ? setback(l) : List.of(),
        spoken(thing, results.notes(thing), List.of()));
  }

  private static List<List<MapSpot>> setback(Landmark landmark) {
    return Outlines.setback(landmark).stream()
        .map(ring -> ring.stream().map(c -> new MapSpot(c[0], c[1])).toList())
        .toList();
  }

  private PlanThing thing(Thing thing) {
    double length = 0;
    double width = 0;
    if (thing instanceof Tank tank) {
      length = tank.diameter().metres();
      width = length;
    } else if (thing instanceof GunBarrel barrel) {
      length = barrel.diameter().metres();
      width = length;
    } else if (thing instanceof Separator separator) {
      width = separator.diameter().metres();
      boolean lies = separator.shape() == Separator.Shape.HORIZONTAL;
      length = lies ? separator.length().metres() : width;
    }
    List<String> notes = results.notes(thing);
    List<Badge> badges = results.badges(thing.id());
    return new PlanThing(
        thing.id(),
        thing.name(),
        ThingKind.of(thing),
        MapSpot.of(thing.at()),
        length,
        width,
        thing.status(),
        notes,
        badges,
        spoken(thing, notes, badges));
  }

  private String spoken(Thing thing, List<String> notes, List<Badge> badges) {
    List<String> parts = new ArrayList<>();
    parts.add(thing.name());
    parts.add(thing.kind());
    parts.add(thing.status().words());
    parts.add(
        "east "
            + units.print(thing.at().east(), 5)
            + ", north "
            + units.print(thing.at().north(), 5));
    parts.addAll(notes);
    badges.forEach(b -> parts.add("sets the " + b.words()));
    return String.join(". ", parts);
  }

  private Optional<PlanLine> line(Line line) {
    Optional<Thing> from = Optional.ofNullable(things.get(line.from()));
    Optional<Thing> to = Optional.ofNullable(things.get(line.to()));
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    List<MapSpot> spots = new ArrayList<>();
    spots.add(MapSpot.of(from.get().at()));
    line.route().forEach(p -> spots.add(MapSpot.of(p.at())));
    spots.add(MapSpot.of(to.get().at()));
    String note = results.note(line.id());
    String spoken =
        line.name()
            + ". "
            + line.kind()
            + " from "
            + from.get().name()
            + " to "
            + to.get().name()
            + (note.isEmpty() ? "" : ". " + note);
    return Optional.of(
        new PlanLine(
            line.id(),
            line.name(),
            line.service(),
            spots,
            line.status(),
            results.way(line.id()),
            note,
            spoken));
  }

  private PlanHeight height(SpotHeight spot) {
    MapPoint at = spot.at();
    return new PlanHeight(MapSpot.of(at), units.print(spot.ground(), 5));
  }
}
