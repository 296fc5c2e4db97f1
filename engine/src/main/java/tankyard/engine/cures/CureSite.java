package tankyard.engine.cures;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Separator;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.LegRun;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Window;

/**
 * What cures are looked for on: one separator of a lease that was worked out.
 *
 * @param cases of the lease
 */
record CureSite(Separator separator, Window window, List<CaseStudy> cases) {

  Lease lease() {
    return cases.get(0).lease();
  }

  Catalog catalog() {
    return cases.get(0).survey().catalog();
  }

  CaseStudy study(String caseId) {
    return cases.stream()
        .filter(c -> c.designCase().id().equals(caseId))
        .findFirst()
        .orElse(cases.get(0));
  }

  /** The water leg that sets the least, in the case in which it does. */
  Optional<LegRun> leg() {
    return window.least().flatMap(this::leg);
  }

  /** What the tank alone asks for, the hardest of them. */
  Optional<PressureLimit> atTank() {
    return window.needed().stream()
        .filter(l -> l.kind() != PressureLimit.Kind.CREST)
        .max(Comparator.comparingDouble(l -> l.gauge().value().toPsi()));
  }

  /** The leg a limit from below comes from. */
  Optional<LegRun> leg(PressureLimit limit) {
    return study(limit.caseId()).waterLegs(separator).stream()
        .filter(leg -> leg.runs().stream().anyMatch(r -> r.laid().id().equals(limit.thingId())))
        .findFirst();
  }

  /** A limit on the way of a leg, in the middle of a sentence. */
  static String named(PressureLimit limit) {
    return limit.crest().isPresent() ? "the " + limit.name() : limit.name();
  }
}
