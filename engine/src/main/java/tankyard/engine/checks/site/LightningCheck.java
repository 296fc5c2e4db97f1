package tankyard.engine.checks.site;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Several;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Tank;
import tankyard.engine.working.Source;

/** Oil tanks stand on the lease: lightning and static have lit many. */
public final class LightningCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("bonding, grounding and filling without splash");

  @Override
  public String id() {
    return "lightning-and-static";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<Tank> tanks = evidence.survey().tanks(Tank.Duty.OIL);
    return tanks.isEmpty() ? List.of() : List.of(finding(tanks));
  }

  private Finding finding(List<Tank> tanks) {
    List<String> splash =
        tanks.stream().filter(t -> t.entry() == Tank.Entry.TOP).map(Tank::name).toList();
    return Finding.of(
            id(),
            Severity.NOTE,
            "",
            "Lightning and static light tanks, and nothing stops it once lit."
                + (splash.isEmpty()
                    ? ""
                    : " Oil enters over the top of " + Several.named(splash) + "."),
            SOURCE)
        .mendedBy(
            "Bond and ground every tank, vessel, walkway and truck; hatches shut; in a storm nobody"
                + " on the tanks, and the wells stopped from outside the berm.",
            "Let a top inlet end below the liquid or run down the wall, with a small hole under the"
                + " roof so that it can't siphon back.");
  }
}
