package tankyard.engine.checks.site;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Well;
import tankyard.engine.working.Source;

/** Wells that make oil into tanks, and nothing here says whether there is H2S. */
public final class GasInTheAirCheck implements Check {
  private static final Source SOURCE =
      Source.published("NIOSH and OSHA alert on opening tank hatches, 2016");

  @Override
  public String id() {
    return "h2s-unknown";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    boolean makesOil =
        evidence.lease().wells().stream()
            .filter(w -> w.status().stays())
            .map(Well::oil)
            .anyMatch(oil -> oil.toBarrelsPerDay() > 0);
    if (!makesOil || evidence.survey().tanks(Tank.Duty.OIL).isEmpty()) {
      return List.of();
    }
    return List.of(
        Finding.of(
                id(),
                Severity.NOTE,
                "",
                "Nothing typed says whether the gas has H2S. Ask before anyone opens a hatch:"
                    + " tank gas and thin air have killed people at open hatches, apart from H2S.",
                SOURCE)
            .mendedBy(
                "Where there is H2S, or nobody knows: a gas meter, a second person, stand upwind,"
                    + " gauge from outside if you can."));
  }
}
