package tankyard.engine.checks.gunbarrel;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.working.Source;

/** The top of the leg does not breathe the vessel's air. */
public final class NoVentCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("leg and vessel vented together, so that the same air stands on both");

  @Override
  public String id() {
    return "gun-barrel-no-vent";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.survey().gunBarrels().stream()
        .filter(g -> g.vent().filter(v -> v == GunBarrel.Vent.NONE).isPresent())
        .map(this::finding)
        .toList();
  }

  private Finding finding(GunBarrel barrel) {
    return Finding.of(
            id(),
            Severity.FIX,
            barrel.id(),
            "The top of "
                + barrel.name()
                + "'s leg has no vent: full of water it pulls over the weir like a siphon, and oil"
                + " follows; an ounce of gas on the vessel moves the interface by inches.",
            SOURCE)
        .mendedBy(
            "A vent at the top of the tee, as wide as the downcomer, led back to the vessel's gas"
                + " space. What it breathes can kill and burn: don't stand over it.");
  }
}
