package tankyard.engine.checks.site;

import java.util.List;
import java.util.stream.Stream;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Vessel;
import tankyard.engine.working.Source;

/** Tanks and vessels: nobody goes in without a permit, and none stands more than ounces. */
public final class ConfinedSpaceCheck implements Check {
  private static final Source SOURCE =
      Source.memory("29 CFR 1910.146, spaces that need a permit to enter");

  @Override
  public String id() {
    return "confined-space";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    boolean any =
        Stream.concat(evidence.lease().tanks().stream(), evidence.lease().vessels())
            .anyMatch(thing -> thing.status().stays());
    boolean under = evidence.lease().vessels().map(Vessel::status).anyMatch(s -> s.stays());
    return any ? List.of(finding(under)) : List.of();
  }

  private Finding finding(boolean vessels) {
    return Finding.of(
            id(),
            Severity.NOTE,
            "",
            "Tanks"
                + (vessels ? " and vessels" : "")
                + " are confined spaces, and a tank holds ounces: air or separator gas on it lifts"
                + " its roof.",
            SOURCE)
        .mendedBy(
            "Nobody in without a permit: isolate, drain, air it, test the air inside and go on"
                + " testing, a watch outside who stays out.",
            "Never push liquid out of a tank with air or gas, nor blow a line out into one.");
  }
}
