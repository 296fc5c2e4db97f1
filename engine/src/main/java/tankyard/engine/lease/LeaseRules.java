package tankyard.engine.lease;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What must hold in every lease, however unfinished it is. */
public final class LeaseRules {
  private LeaseRules() {}

  /**
   * What is broken.
   *
   * @param place the part of the document, as a JSON pointer
   */
  public record Broken(String place, String words) {}

  public static List<Broken> broken(Lease lease) {
    List<Broken> found = new ArrayList<>();
    twiceTheSameId(lease, found);
    for (int i = 0; i < lease.lines().size(); i++) {
      Line line = lease.lines().get(i);
      end(lease, "/lines/" + i + "/from", line, line.from(), found);
      end(lease, "/lines/" + i + "/to", line, line.to(), found);
      if (line.from().equals(line.to())) {
        found.add(
            new Broken(
                "/lines/" + i + "/to",
                "Line "
                    + line.name()
                    + " starts and ends at the same thing, "
                    + line.from()
                    + "."));
      }
    }
    return found;
  }

  private static void end(Lease lease, String place, Line line, String id, List<Broken> found) {
    Optional<Thing> thing = lease.thing(id);
    if (thing.filter(t -> !t.takesLines()).isPresent()) {
      found.add(
          new Broken(
              place,
              "Line "
                  + line.name()
                  + " ends at the "
                  + thing.get().kind()
                  + " \""
                  + id
                  + "\", and no fluid goes there. End it at a well, tee, vessel, tank or pump."));
    } else if (thing.isEmpty()) {
      found.add(
          new Broken(
              place,
              "Line "
                  + line.name()
                  + " ends at \""
                  + id
                  + "\", and there is no such thing on the lease. Known: "
                  + known(lease)));
    }
  }

  private static String known(Lease lease) {
    List<String> ids = lease.things().filter(Thing::takesLines).map(Thing::id).toList();
    String shown = String.join(", ", ids.subList(0, Math.min(8, ids.size())));
    return ids.size() > 8 ? shown + " and " + (ids.size() - 8) + " more." : shown + ".";
  }

  private static void twiceTheSameId(Lease lease, List<Broken> found) {
    Map<String, List<String>> parts = new LinkedHashMap<>();
    parts.put("wells", lease.wells().stream().map(Well::id).toList());
    parts.put("tees", lease.tees().stream().map(Tee::id).toList());
    parts.put("separators", lease.separators().stream().map(Separator::id).toList());
    parts.put("gunBarrels", lease.gunBarrels().stream().map(GunBarrel::id).toList());
    parts.put("tanks", lease.tanks().stream().map(Tank::id).toList());
    parts.put("injectionPumps", lease.injectionPumps().stream().map(InjectionPump::id).toList());
    parts.put("injectionWells", lease.injectionWells().stream().map(InjectionWell::id).toList());
    parts.put("powerPoles", lease.powerPoles().stream().map(PowerPole::id).toList());
    parts.put("berms", lease.berms().stream().map(Berm::id).toList());
    parts.put("landmarks", lease.landmarks().stream().map(Landmark::id).toList());
    parts.put("lines", lease.lines().stream().map(Line::id).toList());
    parts.put("cases", lease.cases().stream().map(DesignCase::id).toList());
    Set<String> seen = new HashSet<>();
    parts.forEach(
        (part, ids) -> {
          for (int i = 0; i < ids.size(); i++) {
            if (!seen.add(ids.get(i))) {
              found.add(
                  new Broken(
                      "/" + part + "/" + i + "/id",
                      "The id \""
                          + ids.get(i)
                          + "\" is used twice; every id must be the only one of its name."));
            }
          }
        });
  }
}
