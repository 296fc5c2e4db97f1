package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The whole document: an immutable tree. An edit gives a new lease that shares what did not change.
 *
 * <p>A lease may be half drawn: a line may still use a pipe that no catalogue has, a separator may
 * have no water leg. Such gaps are findings, not errors. What can't stand is checked by {@code
 * LeaseRules}: two things with one id, a line that ends at nothing.
 */
@RecordBuilder
public record Lease(
    String name,
    String note,
    Site site,
    List<SpotHeight> spotHeights,
    Fluids fluids,
    List<Well> wells,
    List<Tee> tees,
    List<Separator> separators,
    List<GunBarrel> gunBarrels,
    List<Tank> tanks,
    List<InjectionPump> injectionPumps,
    List<InjectionWell> injectionWells,
    List<PowerPole> powerPoles,
    List<Berm> berms,
    List<Landmark> landmarks,
    List<Line> lines,
    List<DesignCase> cases,
    Practice practice,
    Prices prices,
    List<OwnPipe> ownPipes,
    Unknowns unknowns)
    implements LeaseBuilder.With {

  public Lease {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(site, "site");
    Objects.requireNonNull(fluids, "fluids");
    spotHeights = List.copyOf(spotHeights);
    wells = List.copyOf(wells);
    tees = List.copyOf(tees);
    separators = List.copyOf(separators);
    gunBarrels = List.copyOf(gunBarrels);
    tanks = List.copyOf(tanks);
    injectionPumps = List.copyOf(injectionPumps);
    injectionWells = List.copyOf(injectionWells);
    powerPoles = List.copyOf(powerPoles);
    berms = List.copyOf(berms);
    landmarks = List.copyOf(landmarks);
    lines = List.copyOf(lines);
    cases = List.copyOf(cases);
    ownPipes = List.copyOf(ownPipes);
  }

  /** Every thing on the map, kind by kind, each kind in its own order. */
  public Stream<Thing> things() {
    return kinds().stream().flatMap(List::stream);
  }

  private List<List<? extends Thing>> kinds() {
    return List.of(
        wells,
        tees,
        separators,
        gunBarrels,
        tanks,
        injectionPumps,
        injectionWells,
        powerPoles,
        berms,
        landmarks);
  }

  /** Asked hundreds of times in an answer, so it walks the lists and starts no stream. */
  public Optional<Thing> thing(String id) {
    for (List<? extends Thing> kind : kinds()) {
      for (Thing thing : kind) {
        if (thing.id().equals(id)) {
          return Optional.of(thing);
        }
      }
    }
    return Optional.empty();
  }

  /** Separators and gun barrels. */
  public Stream<Vessel> vessels() {
    return Stream.<List<? extends Vessel>>of(separators, gunBarrels).flatMap(List::stream);
  }

  /** Berms and landmarks. */
  public Stream<Outlined> outlines() {
    return Stream.<List<? extends Outlined>>of(berms, landmarks).flatMap(List::stream);
  }

  public Optional<Line> line(String id) {
    for (Line line : lines) {
      if (line.id().equals(id)) {
        return Optional.of(line);
      }
    }
    return Optional.empty();
  }

  public Stream<Line> linesOf(String thingId) {
    return lines.stream().filter(l -> l.touches(thingId));
  }

  /** Wells and injection pumps that stay and whose motor is typed. */
  public Stream<MotorDriven> motorDriven() {
    return Stream.<MotorDriven>concat(wells.stream(), injectionPumps.stream())
        .filter(driven -> driven.status().stays() && driven.motor().isPresent());
  }

  /** The power pole nearest to a place, of those that stay. */
  public Optional<PowerPole> poleNearest(MapPoint place) {
    return powerPoles.stream()
        .filter(pole -> pole.status().stays())
        .min(Comparator.comparingDouble(pole -> pole.at().metresTo(place)));
  }

  /** Adds a thing, or puts it in the place of the one with its id. */
  public Lease with(Thing thing) {
    LeaseBuilder parts = LeaseBuilder.builder(this);
    if (thing instanceof Well well) {
      parts.wells(put(wells, well, Well::id));
    } else if (thing instanceof Tee tee) {
      parts.tees(put(tees, tee, Tee::id));
    } else if (thing instanceof Separator separator) {
      parts.separators(put(separators, separator, Separator::id));
    } else if (thing instanceof GunBarrel barrel) {
      parts.gunBarrels(put(gunBarrels, barrel, GunBarrel::id));
    } else if (thing instanceof Tank tank) {
      parts.tanks(put(tanks, tank, Tank::id));
    } else if (thing instanceof InjectionPump pump) {
      parts.injectionPumps(put(injectionPumps, pump, InjectionPump::id));
    } else if (thing instanceof InjectionWell well) {
      parts.injectionWells(put(injectionWells, well, InjectionWell::id));
    } else if (thing instanceof PowerPole pole) {
      parts.powerPoles(put(powerPoles, pole, PowerPole::id));
    } else if (thing instanceof Berm berm) {
      parts.berms(put(berms, berm, Berm::id));
    } else if (thing instanceof Landmark landmark) {
      parts.landmarks(put(landmarks, landmark, Landmark::id));
    }
    return parts.build();
  }

  /** Adds a line, or puts it in the place of the one with its id. */
  public Lease with(Line line) {
    return withLines(put(lines, line, Line::id));
  }

  /** Takes out a thing with the lines that touch it, or a line. */
  public Lease without(String id) {
    return LeaseBuilder.builder(this)
        .wells(without(wells, id, Well::id))
        .tees(without(tees, id, Tee::id))
        .separators(without(separators, id, Separator::id))
        .gunBarrels(without(gunBarrels, id, GunBarrel::id))
        .tanks(without(tanks, id, Tank::id))
        .injectionPumps(without(injectionPumps, id, InjectionPump::id))
        .injectionWells(without(injectionWells, id, InjectionWell::id))
        .powerPoles(without(powerPoles, id, PowerPole::id))
        .berms(without(berms, id, Berm::id))
        .landmarks(without(landmarks, id, Landmark::id))
        .lines(lines.stream().filter(l -> !l.id().equals(id) && !l.touches(id)).toList())
        .build();
  }

  /** The same lease with every well changed alike. */
  public Lease withEachWell(UnaryOperator<Well> change) {
    return withWells(wells.stream().map(change).toList());
  }

  private static <T> List<T> put(List<T> list, T item, Function<T, String> id) {
    List<T> changed = new ArrayList<>(list);
    for (int i = 0; i < changed.size(); i++) {
      if (id.apply(changed.get(i)).equals(id.apply(item))) {
        changed.set(i, item);
        return changed;
      }
    }
    changed.add(item);
    return changed;
  }

  private static <T> List<T> without(List<T> list, String id, Function<T, String> idOf) {
    return list.stream().filter(t -> !idOf.apply(t).equals(id)).toList();
  }
}
