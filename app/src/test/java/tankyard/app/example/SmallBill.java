package tankyard.app.example;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.catalog.Sundry.Nature;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Status;
import tankyard.engine.pricing.Bill;
import tankyard.engine.pricing.BillLine;
import tankyard.engine.pricing.BillLine.State;
import tankyard.engine.pricing.BillTotals;
import tankyard.engine.takeoff.Share;
import tankyard.engine.units.Fraction;

/** A bill of the small lease, made up by hand: a line in every state. */
public final class SmallBill {
  private SmallBill() {}

  public static Bill bill() {
    return new Bill(
        List.of(
            line(
                State.PRICED,
                "Poly pipe 2 in, DR 11",
                820,
                Quote.Basis.FOOT,
                "1.50",
                "1230.00",
                false,
                true,
                Status.NEW,
                "L1",
                "L2",
                "L3",
                "L4"),
            line(
                State.PRICED,
                "210 bbl steel tank",
                2,
                Quote.Basis.EACH,
                "6200.00",
                "12400.00",
                true,
                false,
                Status.NEW,
                "OT1",
                "WT1"),
            line(
                State.MISSING,
                "Strainer 2 in",
                1,
                Quote.Basis.EACH,
                "",
                "",
                false,
                false,
                Status.NEW,
                "L6"),
            line(
                State.INCLUDED,
                "Thief hatch",
                2,
                Quote.Basis.EACH,
                "",
                "",
                false,
                false,
                Status.NEW,
                "OT1",
                "WT1"),
            line(
                State.HAVE,
                "Separator 30 in x 10 ft",
                1,
                Quote.Basis.EACH,
                "",
                "",
                false,
                false,
                Status.HAVE,
                "S1"),
            line(
                State.PRICED,
                "Crew and winch truck",
                4,
                Quote.Basis.DAY,
                "1850.00",
                "7400.00",
                false,
                true,
                Status.NEW,
                "")),
        new BillTotals(
            new BigDecimal("13630.00"),
            new BigDecimal("7400.00"),
            Fraction.ofPercent(15),
            new BigDecimal("3154.50"),
            Fraction.ofPercent(6),
            new BigDecimal("817.80"),
            new BigDecimal("25002.30"),
            new BigDecimal("4100.00"),
            1,
            1,
            2,
            "USD"),
        Map.of(),
        List.of(new Bill.NotUsed("Q7", "it covers nothing that is drawn.")),
        LocalDate.of(2026, 11, 25));
  }

  private static BillLine line(
      State state,
      String text,
      double quantity,
      Quote.Basis unit,
      String price,
      String total,
      boolean stale,
      boolean invented,
      Status status,
      String... causes) {
    return new BillLine(
        state,
        text,
        Optional.empty(),
        Optional.empty(),
        quantity,
        unit,
        money(price),
        money(total),
        state == State.HAVE ? Optional.of(new BigDecimal("4100.00")) : Optional.empty(),
        state == State.PRICED && !invented ? "Plains Supply" : "",
        state == State.PRICED ? Optional.of(LocalDate.of(2025, 6, 2)) : Optional.empty(),
        invented,
        stale,
        status,
        Nature.GOODS,
        Optional.empty(),
        "",
        List.of(new Share(List.of(causes), quantity)));
  }

  private static Optional<BigDecimal> money(String digits) {
    return digits.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(digits));
  }
}
