package tankyard.engine.cures;

import java.math.BigDecimal;
import java.util.Optional;
import tankyard.engine.units.Pressure;

/**
 * What one change does.
 *
 * @param id what sort of change: {@code bigger-leg}
 * @param thingId what is changed
 * @param words what is done
 * @param care what the numbers do not say; may be empty
 * @param least gauge reading afterwards
 * @param most gauge reading afterwards; empty where no limit is known
 * @param room between the two, less the regulator's build-up; below zero it is short
 * @param gained room against today's, or, where there is none, how much the least falls
 * @param toMend stop and fix findings that are left on the whole lease
 * @param cost change of the bill, without what nobody priced
 * @param unpriced lines of the bill that nobody priced and that were not there before
 * @param billing how much of what it costs the bill tells
 */
public record CureResult(
    String id,
    String thingId,
    String words,
    String care,
    Optional<Pressure> least,
    Optional<Pressure> most,
    Optional<Pressure> room,
    Pressure gained,
    int toMend,
    BigDecimal cost,
    int unpriced,
    Billing billing) {

  /** How much of what a change costs the bill tells. */
  public enum Billing {
    /** All of it, as far as there are prices. */
    ALL,
    /** Not what the change's care names. */
    PART,
    /** It costs every day, which no bill has. */
    DAILY
  }

  /** Money for each psi gained; what gains nothing costs endlessly much. */
  double costPerPsi() {
    double psi = gained.toPsi();
    return psi > 0 ? Math.max(0, cost.doubleValue()) / psi : Double.POSITIVE_INFINITY;
  }
}
