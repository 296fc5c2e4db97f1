package tankyard.engine.pricing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.Price;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.lease.Prices;
import tankyard.engine.lease.Quote;
import tankyard.engine.takeoff.TakeoffKind;
import tankyard.engine.takeoff.TakeoffLine;

/** The way to a bill. */
public final class Pricing {
  private final LinePricer pricer;
  private final List<TakeoffLine> lines;
  private final QuoteBook book;
  private final Map<TakeoffLine, List<BillLine>> byLine = new IdentityHashMap<>();
  private final List<BillLine> atTheEnd = new ArrayList<>();
  private final List<Bill.NotUsed> notUsed = new ArrayList<>();

  private Pricing(List<TakeoffLine> lines, List<Quote> usable, LinePricer pricer) {
    this.pricer = pricer;
    this.lines = lines;
    book = new QuoteBook(usable, lines);
  }

  /**
   * Prices a takeoff.
   *
   * @param quotes of the lease, with contingency and tax
   * @param list for what is not quoted
   * @param asOf the day, to tell stale prices by
   */
  public static Bill price(
      List<TakeoffLine> lines, Prices quotes, PriceList list, Catalog catalog, LocalDate asOf) {
    String currency = currency(quotes, list);
    List<Quote> usable =
        quotes.quotes().stream().filter(q -> q.currency().equals(currency)).toList();
    Pricing pricing = new Pricing(lines, usable, new LinePricer(list, catalog, currency, asOf));
    quotes.quotes().stream()
        .filter(q -> !q.currency().equals(currency))
        .forEach(
            q -> pricing.leave(q, "it is in " + q.currency() + ", and the bill in " + currency));
    usable.forEach(pricing::use);
    return pricing.bill(quotes);
  }

  private static String currency(Prices quotes, PriceList list) {
    return quotes.quotes().stream()
        .map(Quote::currency)
        .findFirst()
        .or(() -> list.all().stream().map(Price::currency).findFirst())
        .orElse("USD");
  }

  private void leave(Quote quote, String why) {
    notUsed.add(new Bill.NotUsed(quote.id(), "\"" + quote.text() + "\" is not used: " + why + "."));
  }

  private void use(Quote quote) {
    List<TakeoffLine> covered = book.covered(quote);
    boolean asWhole = quote.basis() == Quote.Basis.LOT || quote.quantity().isPresent();
    if (asWhole && (!covered.isEmpty() || coversNothingDrawn(quote))) {
      whole(quote, covered);
    } else if (!covered.isEmpty()) {
      perUnit(quote, covered);
    } else {
      leave(quote, whyNothing(quote));
    }
  }

  /** True too for a quote that covers nothing by its own words, such as crew days. */
  private boolean coversNothingDrawn(Quote quote) {
    return lines.stream().noneMatch(line -> QuoteBook.covers(quote, line));
  }

  private String whyNothing(Quote quote) {
    String unknown = unknownWords(quote);
    if (!unknown.isEmpty()) {
      return unknown;
    }
    if (coversNothingDrawn(quote)) {
      return quote.covers().isEmpty()
          ? "it covers nothing and has no quantity"
          : "nothing that it covers is on the drawing, and it has no quantity";
    }
    boolean there =
        lines.stream().filter(l -> QuoteBook.covers(quote, l)).noneMatch(TakeoffLine::costs);
    return there
        ? "everything it covers is there already"
        : "another quote prices everything it covers";
  }

  private void whole(Quote quote, List<TakeoffLine> covered) {
    double quantity = Money.quantity(quote.quantity().orElse(1.0));
    BillLine line = pricer.whole(quote, quantity, covered, unknownWords(quote));
    if (covered.isEmpty()) {
      atTheEnd.add(line);
      return;
    }
    List<BillLine> first = new ArrayList<>();
    first.add(line);
    first.add(pricer.included(covered.get(0), quote));
    byLine.put(covered.get(0), first);
    covered.stream().skip(1).forEach(l -> byLine.put(l, List.of(pricer.included(l, quote))));
  }

  /** What a quote covers by a word that means nothing here; said beside its price. */
  private String unknownWords(Quote quote) {
    List<String> unknown =
        quote.covers().stream()
            .filter(w -> TakeoffKind.find(w).isEmpty() && pricer.catalog().item(w).isEmpty())
            .toList();
    return unknown.isEmpty()
        ? ""
        : "\""
            + String.join("\", \"", unknown)
            + "\" is neither a kind of takeoff line nor in the catalogue";
  }

  private void perUnit(Quote quote, List<TakeoffLine> covered) {
    boolean any = false;
    for (TakeoffLine line : covered) {
      OptionalDouble factor =
          line.comesWith()
              ? OptionalDouble.empty()
              : Measures.factor(line, quote.basis(), pricer.catalog());
      factor.ifPresent(f -> byLine.put(line, List.of(pricer.quoted(line, quote, f))));
      any |= factor.isPresent();
    }
    if (any) {
      covered.stream()
          .filter(line -> !byLine.containsKey(line))
          .forEach(line -> byLine.put(line, List.of(pricer.included(line, quote))));
    } else {
      leave(
          quote,
          "it is priced " + quote.basis().words() + ", and nothing it covers is counted that way");
    }
  }

  private Bill bill(Prices quotes) {
    List<BillLine> all = new ArrayList<>();
    for (TakeoffLine line : lines) {
      all.addAll(
          Optional.ofNullable(byLine.get(line)).orElseGet(() -> List.of(pricer.fromList(line))));
    }
    all.addAll(atTheEnd);
    return new Bill(
        all,
        Sums.totals(all, quotes, pricer.currency()),
        Sums.perThing(all),
        notUsed,
        pricer.asOf());
  }
}
