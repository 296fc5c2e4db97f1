package tankyard.engine.pricing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * A priced takeoff.
 *
 * @param perThing what each drawn thing is charged with, before contingency and tax; {@code ""} has
 *     what nothing drawn caused
 * @param notUsed quotes that price nothing, and why
 * @param asOf the day it was priced
 */
public record Bill(
    List<BillLine> lines,
    BillTotals totals,
    Map<String, BigDecimal> perThing,
    List<NotUsed> notUsed,
    LocalDate asOf) {

  /** A quote that prices nothing. */
  public record NotUsed(String quoteId, String why) {}

  public Bill {
    lines = List.copyOf(lines);
    notUsed = List.copyOf(notUsed);
    perThing = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(perThing));
  }
}
