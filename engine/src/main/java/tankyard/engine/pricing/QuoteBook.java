package tankyard.engine.pricing;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.lease.Quote;
import tankyard.engine.takeoff.TakeoffLine;

/** Which quote prices which takeoff line. */
final class QuoteBook {
  private final Map<String, List<TakeoffLine>> covered = new LinkedHashMap<>();
  private final Map<TakeoffLine, Quote> quoteOf = new IdentityHashMap<>();

  QuoteBook(List<Quote> quotes, List<TakeoffLine> lines) {
    quotes.forEach(q -> covered.put(q.id(), new ArrayList<>()));
    for (TakeoffLine line : lines) {
      if (line.costs()) {
        best(quotes, line).ifPresent(quote -> assign(quote, line));
      }
    }
  }

  private void assign(Quote quote, TakeoffLine line) {
    covered.get(quote.id()).add(line);
    quoteOf.put(line, quote);
  }

  /** One that names the item before one that names the kind, then the first. */
  private static Optional<Quote> best(List<Quote> quotes, TakeoffLine line) {
    Optional<Quote> byItem =
        line.item().flatMap(id -> quotes.stream().filter(q -> q.covers().contains(id)).findFirst());
    return byItem.isPresent()
        ? byItem
        : quotes.stream().filter(q -> q.covers().contains(line.kind().id())).findFirst();
  }

  static boolean covers(Quote quote, TakeoffLine line) {
    return quote.covers().contains(line.kind().id())
        || line.item().filter(quote.covers()::contains).isPresent();
  }

  List<TakeoffLine> covered(Quote quote) {
    return covered.getOrDefault(quote.id(), List.of());
  }

  Optional<Quote> quoteOf(TakeoffLine line) {
    return Optional.ofNullable(quoteOf.get(line));
  }
}
