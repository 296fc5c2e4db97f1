package tankyard.app.map.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.app.figures.Digits;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Well;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.WellResult;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.FeetInches;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Window;

/** The few results that stand on the map: more would hide the drawing. */
final class PlanResults {
  private final Map<String, WellResult> wells = new HashMap<>();
  private final Map<String, LineResult> lines = new HashMap<>();
  private final Map<String, GunBarrelResult> barrels = new HashMap<>();
  private final List<Window> windows;
  private final UnitSystem units;

  PlanResults(Optional<LeaseAnswer> answer, String caseId, UnitSystem units) {
    Optional<CaseResult> results = answer.flatMap(a -> a.designCase(caseId));
    results.ifPresent(r -> r.wells().forEach(w -> wells.put(w.wellId(), w)));
    results.ifPresent(r -> r.lines().forEach(l -> lines.put(l.lineId(), l)));
    results.ifPresent(r -> r.gunBarrels().forEach(g -> barrels.put(g.gunBarrelId(), g)));
    this.windows = answer.map(LeaseAnswer::windows).orElse(List.of());
    this.units = units;
  }

  List<String> notes(Thing thing) {
    List<String> notes = new ArrayList<>();
    if (thing instanceof Well) {
      Optional.ofNullable(wells.get(thing.id()))
          .ifPresent(w -> notes.add("box " + print(w.box().value())));
    } else if (thing instanceof Separator) {
      windows.stream()
          .filter(w -> w.separatorId().equals(thing.id()))
          .forEach(
              w -> w.advised().ifPresent(s -> notes.add("set to " + print(s.regulator().value()))));
    }
    Optional.ofNullable(barrels.get(thing.id()))
        .ifPresent(g -> notes.add("weir " + FeetInches.print(g.cut().stands().value())));
    return notes;
  }

  String note(String lineId) {
    return line(lineId).map(l -> print(l.flow())).orElse("");
  }

  int way(String lineId) {
    return line(lineId).map(l -> (int) Math.signum(l.flow().si())).orElse(1);
  }

  private Optional<LineResult> line(String id) {
    return Optional.ofNullable(lines.get(id));
  }

  /** What a thing or a vessel sets. A crest has a mark of its own on the line. */
  List<Badge> badges(String thingId) {
    List<Badge> badges = new ArrayList<>();
    for (Window window : windows) {
      window.least().filter(l -> sets(l, thingId)).ifPresent(l -> badges.add(least(l)));
      window.most().filter(l -> sets(l, thingId)).ifPresent(l -> badges.add(most(l)));
    }
    return badges;
  }

  private static boolean sets(PressureLimit limit, String thingId) {
    return limit.thingId().equals(thingId);
  }

  /** The marks of a line that sets an end of the window: at its crest, or where it ends. */
  List<PlanMark> marks(PlanLine line) {
    List<PlanMark> marks = new ArrayList<>();
    for (Window window : windows) {
      window
          .least()
          .filter(l -> sets(l, line.id()))
          .ifPresent(l -> marks.add(new PlanMark(line.id(), spotOf(line, l), least(l))));
      window
          .most()
          .filter(l -> sets(l, line.id()))
          .ifPresent(l -> marks.add(new PlanMark(line.id(), line.along(0.5), most(l))));
    }
    return marks;
  }

  private MapSpot spotOf(PlanLine line, PressureLimit limit) {
    Optional<LineResult> found = line(line.id());
    if (limit.kind() != PressureLimit.Kind.CREST || found.isEmpty()) {
      return line.along(1);
    }
    LineResult result = found.get();
    double share =
        result.crest().map(c -> c.distance().metres() / result.length().metres()).orElse(1.0);
    return line.along(share);
  }

  private Badge least(PressureLimit limit) {
    return new Badge(Badge.End.LEAST, "gauge at least " + print(limit));
  }

  private Badge most(PressureLimit limit) {
    return new Badge(
        Badge.End.MOST,
        limit.beyondAnyGauge() ? "no gauge reading would do" : "gauge at most " + print(limit));
  }

  private String print(PressureLimit limit) {
    Unit unit = units.unit(Dimension.PRESSURE);
    return Digits.withUnit(unit, limit.gauge().value().in(unit), limit.rounding());
  }

  /** With as many decimals as the tables show, so that one number is not seen as two. */
  private String print(Quantity quantity) {
    Unit unit = units.unit(quantity.dimension());
    return Digits.withUnit(unit, quantity.in(unit));
  }
}
