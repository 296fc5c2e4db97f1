package tankyard.app.takeoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Thing;
import tankyard.engine.pricing.Bill;
import tankyard.engine.pricing.BillLine;
import tankyard.engine.units.Figures;

/** Turns a bill into rows. */
final class BillRows {
  /** So many names tell enough; the rest are counted. */
  private static final int NAMES = 3;

  private BillRows() {}

  static List<BillRow> of(Bill bill, Lease lease) {
    return bill.lines().stream().map(line -> row(line, lease)).toList();
  }

  private static BillRow row(BillLine line, Lease lease) {
    return new BillRow(
        line.text(),
        line.causes(),
        names(line.causes(), lease),
        line.quantity(),
        quantity(line.quantity()),
        line.unit().words().replaceFirst("^per ", ""),
        price(line),
        line.unitPrice().map(BigDecimal::doubleValue).orElse(-1.0),
        line.total().map(BillRows::money).orElse(""),
        line.total().orElse(BigDecimal.ZERO),
        line.state(),
        line.status().words(),
        line.stale(),
        remark(line));
  }

  /** As it was reckoned with, so that quantity times price is the total beside it. */
  private static String quantity(double quantity) {
    return quantity == Math.rint(quantity)
        ? Figures.grouped(quantity)
        : Figures.grouped(quantity, 2);
  }

  private static String price(BillLine line) {
    return switch (line.state()) {
      case PRICED -> line.unitPrice().map(BillRows::money).orElse("");
      case INCLUDED, MISSING, HAVE -> line.state().words();
    };
  }

  private static String remark(BillLine line) {
    List<String> remarks = new ArrayList<>();
    if (line.stale()) {
      remarks.add("old price");
    }
    if (line.invented()) {
      remarks.add("made-up price");
    } else if (!line.vendor().isBlank()) {
      remarks.add(line.vendor());
    }
    line.date().ifPresent(date -> remarks.add(date.toString()));
    line.worth().ifPresent(worth -> remarks.add("worth " + money(worth)));
    if (!line.note().isBlank()) {
      remarks.add(line.note());
    }
    return String.join(", ", remarks);
  }

  static String money(BigDecimal amount) {
    return String.format(Locale.ROOT, "%,.2f", amount);
  }

  private static String names(List<String> ids, Lease lease) {
    List<String> names = new ArrayList<>();
    ids.stream().limit(NAMES).forEach(id -> names.add(name(id, lease)));
    int more = ids.size() - NAMES;
    return String.join(", ", names) + (more > 0 ? " and " + more + " more" : "");
  }

  private static String name(String id, Lease lease) {
    return lease
        .thing(id)
        .map(Thing::name)
        .or(() -> lease.line(id).map(Line::name))
        .orElse(id.isEmpty() ? "the lease" : id);
  }
}
