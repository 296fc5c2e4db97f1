package tankyard.engine.wells;

import java.util.List;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * The federal screening form of the most wellhead pressure: {@code Pm = (0.733 - 0.433 SG) depth},
 * psi and feet (40 CFR 147.503, for some wells in one state; other places print 0.800). Heavier
 * water allows less at the surface. A permit's own number always governs.
 */
public final class ScreeningLimit {
  private static final Source SOURCE =
      Source.published("40 CFR 147.503, screening form; the permit governs");

  private ScreeningLimit() {}

  public static Computed<Pressure> of(Length depth, Gravity brine) {
    double psi = (0.733 - 0.433 * brine.specific()) * depth.toFeet();
    return Computed.of(
            Pressure.ofPsi(psi),
            () ->
                Working.of(
                    "Most wellhead pressure by the screening form",
                    "Pm",
                    "(0.733-0.433*SG)*D",
                    Unit.PSI,
                    SOURCE,
                    Term.of("SG", "gravity of the water", brine, Unit.SPECIFIC_GRAVITY),
                    Term.of("D", "depth to the zone", depth, Unit.FOOT)))
        .with(
            List.of(
                new Caution(
                    "injection-limit-screening",
                    "A screening form, not a permit: use the pressure and rate printed in the"
                        + " permit.")));
  }
}
