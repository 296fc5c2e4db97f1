package tankyard.engine.pricing;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import tankyard.engine.takeoff.TakeoffKind;
import tankyard.engine.units.Figures;

/** Writes a bill as CSV: one line each, then the sums. */
public final class BillCsv {
  private static final String[] COLUMNS = {
    "text",
    "kind",
    "item",
    "status",
    "state",
    "quantity",
    "unit",
    "unit_price",
    "total",
    "worth",
    "currency",
    "vendor",
    "date",
    "invented",
    "stale",
    "quote",
    "for",
    "note"
  };

  private static final int TOTAL_COLUMN = 8;

  private BillCsv() {}

  public static void write(Bill bill, Appendable out) throws IOException {
    CSVFormat format =
        CSVFormat.RFC4180.builder().setHeader(COLUMNS).setRecordSeparator('\n').get();
    CSVPrinter printer = new CSVPrinter(out, format);
    String currency = bill.totals().currency();
    for (BillLine line : bill.lines()) {
      printer.printRecord(
          line.text(),
          line.kind().map(TakeoffKind::id).orElse(""),
          line.item().orElse(""),
          line.status().words(),
          line.state().words(),
          Figures.decimals(line.quantity(), 2),
          line.unit().words(),
          text(line.unitPrice()),
          text(line.total()),
          text(line.worth()),
          currency,
          line.vendor(),
          line.date().map(Object::toString).orElse(""),
          line.invented() ? "yes" : "",
          line.stale() ? "yes" : "",
          line.quotedBy().orElse(""),
          String.join(" ", line.causes()),
          line.note());
    }
    sums(bill.totals(), printer);
  }

  private static void sums(BillTotals totals, CSVPrinter printer) throws IOException {
    sum(printer, "Goods", totals.goods(), totals);
    sum(printer, "Work", totals.work(), totals);
    sum(printer, "Contingency " + percent(totals.contingencyRate()), totals.contingency(), totals);
    sum(printer, "Tax on goods " + percent(totals.taxRate()), totals.tax(), totals);
    String without = totals.unpriced() == 0 ? "" : ", without " + totals.unpriced() + " unpriced";
    sum(printer, "Total" + without, totals.total(), totals);
  }

  private static String percent(tankyard.engine.units.Fraction rate) {
    return Figures.significant(rate.toPercent(), 4) + " %";
  }

  private static void sum(CSVPrinter printer, String text, BigDecimal amount, BillTotals totals)
      throws IOException {
    String[] cells = new String[COLUMNS.length];
    java.util.Arrays.fill(cells, "");
    cells[0] = text;
    cells[TOTAL_COLUMN] = amount.toPlainString();
    cells[TOTAL_COLUMN + 2] = totals.currency();
    printer.printRecord((Object[]) cells);
  }

  private static String text(Optional<BigDecimal> amount) {
    return amount.map(a -> a.setScale(Math.max(2, a.scale())).toPlainString()).orElse("");
  }
}
