package tankyard.engine.cures;

import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Pressure;

/**
 * What would help one separator.
 *
 * @param least gauge reading today
 * @param most gauge reading today; empty where no limit is known
 * @param room between the two, less the regulator's build-up
 * @param toMend stop and fix findings of the whole lease today
 * @param cures best first: those that leave the fewest stop and fix findings, among them those the
 *     bill knows in full, among them the cheapest for each psi gained
 * @param others other ways: by hand sums, and a gun barrel worked out in the separator's place
 * @param reaches how far the water tank can stand, by pipe
 * @param levels what its level asks for, filled from below; empty where no leg leads to one
 * @param currency of the costs
 */
public record CureBook(
    String separatorId,
    String separatorName,
    Optional<Pressure> least,
    Optional<Pressure> most,
    Optional<Pressure> room,
    int toMend,
    List<CureResult> cures,
    List<String> others,
    List<TankReach> reaches,
    Optional<TankLevels> levels,
    String currency) {
  public CureBook {
    cures = List.copyOf(cures);
    others = List.copyOf(others);
    reaches = List.copyOf(reaches);
  }
}
