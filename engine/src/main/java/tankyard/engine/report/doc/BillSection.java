package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tankyard.engine.pricing.Bill;
import tankyard.engine.pricing.BillLine;
import tankyard.engine.pricing.BillTotals;
import tankyard.engine.takeoff.TakeoffKind;

/** The bill in short: what each kind of thing comes to, and the sums. */
final class BillSection {
  private static final String SEVERAL = "quotes by themselves";

  private final Bill bill;
  private final BillTotals totals;

  private BillSection(Bill bill) {
    this.bill = bill;
    this.totals = bill.totals();
  }

  static List<Section> of(Draft draft) {
    Bill bill = draft.results().bill();
    if (bill.lines().isEmpty()) {
      return List.of();
    }
    BillSection section = new BillSection(bill);
    return List.of(
        Section.of(
            "Bill in short",
            section.kinds(),
            section.sums(draft),
            new Block.Points(section.cautions())));
  }

  private Block kinds() {
    Map<String, List<BillLine>> byKind = new LinkedHashMap<>();
    for (BillLine line : bill.lines()) {
      String kind = line.kind().map(TakeoffKind::words).orElse(SEVERAL);
      byKind.computeIfAbsent(kind, k -> new ArrayList<>()).add(line);
    }
    List<List<String>> rows = new ArrayList<>();
    byKind.forEach((kind, lines) -> rows.add(row(kind, lines)));
    return new Block.Table(
        "",
        List.of(
            text("kind"),
            number("lines"),
            number(totals.currency()),
            number("without a price"),
            number("have it, worth")),
        rows);
  }

  private static List<String> row(String kind, List<BillLine> lines) {
    long missing = lines.stream().filter(l -> l.state() == BillLine.State.MISSING).count();
    BigDecimal worth = sum(lines.stream().flatMap(l -> l.worth().stream()).toList());
    return List.of(
        kind,
        String.valueOf(lines.size()),
        Amounts.digits(sum(lines.stream().flatMap(l -> l.total().stream()).toList())),
        missing == 0 ? "" : String.valueOf(missing),
        worth.signum() == 0 ? "" : Amounts.digits(worth));
  }

  private static BigDecimal sum(List<BigDecimal> amounts) {
    return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private Block sums(Draft draft) {
    String mark = draft.mark(totals.working());
    List<List<String>> rows =
        List.of(
            List.of("goods", Amounts.digits(totals.goods()), ""),
            List.of("work", Amounts.digits(totals.work()), ""),
            List.of(
                "contingency " + percent(totals.contingencyRate().toPercent()),
                Amounts.digits(totals.contingency()),
                ""),
            List.of(
                "tax on goods " + percent(totals.taxRate().toPercent()),
                Amounts.digits(totals.tax()),
                ""),
            List.of("total", Amounts.digits(totals.total()), mark));
    return new Block.Table(
        "", List.of(text("sums"), number(totals.currency()), text("working")), rows);
  }

  private static String percent(double percent) {
    return tankyard.engine.units.Figures.significant(percent, 4) + " %";
  }

  private List<String> cautions() {
    List<String> points = new ArrayList<>();
    count(totals.unpriced(), "has no price, and the total is without it", points);
    count(totals.stale(), "has a price a year old or more", points);
    count(totals.invented(), "has an invented price: ask a supply store for real ones", points);
    bill.notUsed().forEach(n -> points.add("Quote " + n.quoteId() + ": " + n.why()));
    points.add("Priced as of " + bill.asOf() + ". Get firm quotes before you buy.");
    return points;
  }

  private static void count(int lines, String words, List<String> points) {
    if (lines > 0) {
      points.add(lines + (lines == 1 ? " line " : " lines, each of which ") + words + ".");
    }
  }
}
