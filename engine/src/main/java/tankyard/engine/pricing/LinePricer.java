package tankyard.engine.pricing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.Price;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.catalog.Sundry.Nature;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Status;
import tankyard.engine.takeoff.Share;
import tankyard.engine.takeoff.TakeoffKind;
import tankyard.engine.takeoff.TakeoffLine;

/** Writes single bill lines. */
record LinePricer(PriceList prices, Catalog catalog, String currency, LocalDate asOf) {

  boolean isStale(Optional<LocalDate> date) {
    return date.filter(d -> !d.plusYears(1).isAfter(asOf)).isPresent();
  }

  /** A line nobody quoted. */
  BillLine fromList(TakeoffLine line) {
    Optional<Price> listed = line.item().flatMap(prices::price);
    Optional<Price> price = listed.filter(p -> p.currency().equals(currency));
    OptionalDouble factor =
        price.map(p -> Measures.factor(line, p.basis(), catalog)).orElse(OptionalDouble.empty());
    if (price.isEmpty() || factor.isEmpty()) {
      return unpriced(line, whyNot(line, listed, price));
    }
    Price p = price.get();
    double quantity = Money.quantity(line.bought() * factor.getAsDouble());
    BigDecimal total = Money.times(p.price(), quantity);
    boolean costs = line.costs();
    return new BillLine(
        costs ? BillLine.State.PRICED : BillLine.State.HAVE,
        line.text(),
        Optional.of(line.kind()),
        line.item(),
        quantity,
        p.basis(),
        Optional.of(p.price()),
        costs ? Optional.of(total) : Optional.empty(),
        costs ? Optional.empty() : Optional.of(total),
        p.vendor(),
        Optional.of(p.date()),
        p.invented(),
        isStale(Optional.of(p.date())),
        line.status(),
        line.nature(),
        Optional.empty(),
        line.boughtAs(),
        line.shares());
  }

  private static String whyNot(TakeoffLine line, Optional<Price> listed, Optional<Price> price) {
    if (line.item().isEmpty()) {
      return "not in the catalogue";
    }
    if (listed.isEmpty()) {
      return "not in the price list";
    }
    return price.isEmpty()
        ? "priced in " + listed.get().currency()
        : "priced " + price.get().basis().words() + ", counted " + line.measure().words();
  }

  private BillLine unpriced(TakeoffLine line, String why) {
    BillLine.State state = line.costs() ? BillLine.State.MISSING : BillLine.State.HAVE;
    return bare(line, state, Optional.empty(), why);
  }

  /** A line that a quote has in its price. */
  BillLine included(TakeoffLine line, Quote quote) {
    return bare(
        line, BillLine.State.INCLUDED, Optional.of(quote.id()), "in \"" + quote.text() + "\"");
  }

  private static BillLine bare(
      TakeoffLine line, BillLine.State state, Optional<String> quotedBy, String note) {
    return new BillLine(
        state,
        line.text(),
        Optional.of(line.kind()),
        line.item(),
        Money.quantity(line.bought()),
        line.measure(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "",
        Optional.empty(),
        false,
        false,
        line.status(),
        line.nature(),
        quotedBy,
        note,
        line.shares());
  }

  /** A line priced by a quote for so much of it: drawn quantity, and the quote's own waste. */
  BillLine quoted(TakeoffLine line, Quote quote, double factor) {
    double waste = quote.waste().map(w -> w.ratio()).orElse(0.0);
    boolean length = quote.basis() == Quote.Basis.FOOT || quote.basis() == Quote.Basis.METRE;
    double base = length ? line.drawn() : line.bought();
    double quantity = Money.quantity(base * factor * (1 + waste));
    return quoteLine(
        quote,
        line.text(),
        Optional.of(line.kind()),
        line.item(),
        quantity,
        line.status(),
        line.nature(),
        "",
        line.shares());
  }

  /** A quote as a line of its own, with whatever it covers in it. */
  BillLine whole(Quote quote, double quantity, List<TakeoffLine> covered, String note) {
    List<TakeoffKind> kinds = covered.stream().map(TakeoffLine::kind).distinct().toList();
    Status status =
        !covered.isEmpty() && covered.stream().allMatch(l -> l.status() == Status.REMOVE)
            ? Status.REMOVE
            : Status.NEW;
    List<Share> shares = new ArrayList<>();
    for (TakeoffLine line : covered) {
      line.shares().forEach(s -> shares.add(new Share(s.causes(), s.quantity() / line.drawn())));
    }
    return quoteLine(
        quote,
        quote.text(),
        kinds.size() == 1 ? Optional.of(kinds.get(0)) : Optional.empty(),
        Optional.empty(),
        quantity,
        status,
        nature(quote, covered),
        note,
        shares);
  }

  private static Nature nature(Quote quote, List<TakeoffLine> covered) {
    if (covered.isEmpty()) {
      List<TakeoffKind> named =
          quote.covers().stream().flatMap(id -> TakeoffKind.find(id).stream()).toList();
      boolean work =
          named.isEmpty()
              ? quote.basis() == Quote.Basis.DAY
              : named.stream().allMatch(k -> k.nature() == Nature.WORK);
      return work ? Nature.WORK : Nature.GOODS;
    }
    boolean work =
        covered.stream()
            .allMatch(l -> l.nature() == Nature.WORK || l.kind().nature() == Nature.WORK);
    return work ? Nature.WORK : Nature.GOODS;
  }

  private BillLine quoteLine(
      Quote quote,
      String text,
      Optional<TakeoffKind> kind,
      Optional<String> item,
      double quantity,
      Status status,
      Nature nature,
      String note,
      List<Share> shares) {
    return new BillLine(
        BillLine.State.PRICED,
        text,
        kind,
        item,
        quantity,
        quote.basis(),
        Optional.of(quote.price()),
        Optional.of(Money.times(quote.price(), quantity)),
        Optional.empty(),
        quote.vendor(),
        quote.date(),
        isInvented(quote),
        isStale(quote.date()),
        status,
        nature,
        Optional.of(quote.id()),
        note,
        shares);
  }

  /** A lease to try the program with says so in the vendor's name. */
  private static boolean isInvented(Quote quote) {
    return quote.vendor().toLowerCase(Locale.ROOT).startsWith("invented");
  }
}
