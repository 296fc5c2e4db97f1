package tankyard.engine.checks.all;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.site.DiagnosesCheck;
import tankyard.engine.checks.tanks.OilStorageCheck;
import tankyard.engine.lease.Lease;

/** Every rule there is, and what all of them find on one lease. */
public final class AllChecks {
  private static final List<Check> CHECKS = List.of(new DiagnosesCheck(), new OilStorageCheck());

  private AllChecks() {}

  /** Every rule, in the order in which like findings are told. */
  public static List<Check> list() {
    return CHECKS;
  }

  /**
   * What all rules find: the worst first, then what concerns the whole lease, then thing by thing
   * in the lease's order. Of one id on one thing only the worst is kept.
   */
  public static List<Finding> look(Evidence evidence) {
    Map<String, Finding> kept = new LinkedHashMap<>();
    for (Check check : CHECKS) {
      for (Finding finding : check.look(evidence)) {
        kept.merge(
            finding.id() + " " + finding.thingId(),
            finding,
            (a, b) -> b.severity().compareTo(a.severity()) < 0 ? b : a);
      }
    }
    List<Finding> found = new ArrayList<>(kept.values());
    Map<String, Integer> place = places(evidence.lease());
    found.sort(
        Comparator.comparing(Finding::severity)
            .thenComparing(f -> place.getOrDefault(f.thingId(), Integer.MAX_VALUE)));
    return List.copyOf(found);
  }

  private static Map<String, Integer> places(Lease lease) {
    Map<String, Integer> place = new HashMap<>();
    place.put("", 0);
    lease.things().forEach(thing -> place.put(thing.id(), place.size()));
    lease.lines().forEach(line -> place.put(line.id(), place.size()));
    return place;
  }
}
