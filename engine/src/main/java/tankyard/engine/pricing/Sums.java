package tankyard.engine.pricing;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import tankyard.engine.catalog.Sundry.Nature;
import tankyard.engine.lease.Prices;
import tankyard.engine.takeoff.Share;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Unit;

/** Adds a bill up. */
final class Sums {
  private static final Fraction NONE = Fraction.of(0, Unit.ONE);

  private Sums() {}

  static BillTotals totals(List<BillLine> lines, Prices prices, String currency) {
    BigDecimal goods = sum(lines, Nature.GOODS);
    BigDecimal work = sum(lines, Nature.WORK);
    Fraction contingencyRate = prices.contingency().orElse(NONE);
    Fraction taxRate = prices.tax().orElse(NONE);
    BigDecimal contingency = Money.times(goods.add(work), contingencyRate.ratio());
    BigDecimal tax = Money.times(goods, taxRate.ratio());
    return new BillTotals(
        goods,
        work,
        contingencyRate,
        contingency,
        taxRate,
        tax,
        goods.add(work).add(contingency).add(tax),
        Money.sum(lines.stream().flatMap(l -> l.worth().stream()).toList()),
        count(lines, l -> l.state() == BillLine.State.MISSING),
        count(lines, l -> l.state() == BillLine.State.PRICED && l.stale()),
        count(lines, l -> l.state() == BillLine.State.PRICED && l.invented()),
        currency);
  }

  private static int count(List<BillLine> lines, Predicate<BillLine> which) {
    return (int) lines.stream().filter(which).count();
  }

  private static BigDecimal sum(List<BillLine> lines, Nature nature) {
    return Money.sum(
        lines.stream()
            .filter(line -> line.nature() == nature)
            .flatMap(line -> line.total().stream())
            .toList());
  }

  /** Each line's total by who caused how much of it; the cents left over go to the last. */
  static Map<String, BigDecimal> perThing(List<BillLine> lines) {
    Map<String, Long> cents = new LinkedHashMap<>();
    for (BillLine line : lines) {
      line.total()
          .ifPresent(total -> charge(cents, total.unscaledValue().longValueExact(), line.shares()));
    }
    Map<String, BigDecimal> sums = new LinkedHashMap<>();
    cents.forEach((thing, sum) -> sums.put(thing, BigDecimal.valueOf(sum, 2)));
    return sums;
  }

  private static void charge(Map<String, Long> sums, long cents, List<Share> shares) {
    if (shares.isEmpty()) {
      sums.merge("", cents, Long::sum);
      return;
    }
    double all = shares.stream().mapToDouble(Share::quantity).sum();
    long left = cents;
    for (int i = 0; i < shares.size(); i++) {
      Share share = shares.get(i);
      boolean last = i == shares.size() - 1;
      long part = last ? left : Math.round(cents * (share.quantity() / all));
      sums.merge(share.owner(), part, Long::sum);
      left -= part;
    }
  }
}
