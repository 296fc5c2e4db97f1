package tankyard.app.example;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.lease.Lease;
import tankyard.engine.pricing.Bill;
import tankyard.engine.pricing.BillTotals;
import tankyard.engine.study.Yard;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Unit;

/** An answer that knows nothing of its lease, for tests that only ask when an answer comes. */
public final class NoAnswer {
  private static final Fraction NOTHING = Fraction.of(0, Unit.PERCENT);
  static final Bill NO_BILL =
      new Bill(
          List.of(),
          new BillTotals(
              BigDecimal.ZERO,
              BigDecimal.ZERO,
              NOTHING,
              BigDecimal.ZERO,
              NOTHING,
              BigDecimal.ZERO,
              BigDecimal.ZERO,
              BigDecimal.ZERO,
              0,
              0,
              0,
              "USD"),
          Map.of(),
          List.of(),
          LocalDate.of(2026, 11, 25));

  private NoAnswer() {}

  public static LeaseAnswer of(Lease lease) {
    return new LeaseAnswer(
        lease,
        List.of(),
        List.of(),
        Yard.empty(),
        List.of(),
        Optional.empty(),
        List.of(),
        NO_BILL,
        List.of(),
        List.of());
  }
}
