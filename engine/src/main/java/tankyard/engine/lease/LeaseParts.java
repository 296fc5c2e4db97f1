package tankyard.engine.lease;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The parts of a lease while an edit puts a new one together. */
final class LeaseParts {
  String name;
  String note;
  Site site;
  List<SpotHeight> spotHeights;
  Fluids fluids;
  List<Well> wells;
  List<Tee> tees;
  List<Separator> separators;
  List<Tank> tanks;
  List<InjectionPump> injectionPumps;
  List<InjectionWell> injectionWells;
  List<Line> lines;
  List<DesignCase> cases;
  Practice practice;
  Prices prices;
  List<OwnPipe> ownPipes;
  Unknowns unknowns;

  LeaseParts(Lease lease) {
    name = lease.name();
    note = lease.note();
    site = lease.site();
    spotHeights = lease.spotHeights();
    fluids = lease.fluids();
    wells = lease.wells();
    tees = lease.tees();
    separators = lease.separators();
    tanks = lease.tanks();
    injectionPumps = lease.injectionPumps();
    injectionWells = lease.injectionWells();
    lines = lease.lines();
    cases = lease.cases();
    practice = lease.practice();
    prices = lease.prices();
    ownPipes = lease.ownPipes();
    unknowns = lease.unknowns();
  }

  Lease toLease() {
    return new Lease(
        name,
        note,
        site,
        spotHeights,
        fluids,
        wells,
        tees,
        separators,
        tanks,
        injectionPumps,
        injectionWells,
        lines,
        cases,
        practice,
        prices,
        ownPipes,
        unknowns);
  }

  void put(Thing thing) {
    if (thing instanceof Well well) {
      wells = put(wells, well, Well::id);
    } else if (thing instanceof Tee tee) {
      tees = put(tees, tee, Tee::id);
    } else if (thing instanceof Separator separator) {
      separators = put(separators, separator, Separator::id);
    } else if (thing instanceof Tank tank) {
      tanks = put(tanks, tank, Tank::id);
    } else if (thing instanceof InjectionPump pump) {
      injectionPumps = put(injectionPumps, pump, InjectionPump::id);
    } else if (thing instanceof InjectionWell well) {
      injectionWells = put(injectionWells, well, InjectionWell::id);
    }
  }

  void remove(String id) {
    wells = without(wells, id, Well::id);
    tees = without(tees, id, Tee::id);
    separators = without(separators, id, Separator::id);
    tanks = without(tanks, id, Tank::id);
    injectionPumps = without(injectionPumps, id, InjectionPump::id);
    injectionWells = without(injectionWells, id, InjectionWell::id);
    lines = lines.stream().filter(l -> !l.id().equals(id) && !l.touches(id)).toList();
  }

  static <T> List<T> put(List<T> list, T item, Function<T, String> id) {
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
