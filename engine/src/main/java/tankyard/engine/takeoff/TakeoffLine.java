package tankyard.engine.takeoff;

import java.util.List;
import java.util.Optional;
import tankyard.engine.catalog.Sundry.Nature;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Status;

/**
 * One line of the takeoff.
 *
 * @param item catalogue id; empty where the catalogue has no such thing
 * @param text what it is, in words
 * @param drawn how much the drawing shows
 * @param bought how much is bought for it: waste and whole pieces
 * @param boughtAs how the pieces come, for example {@code 4 rolls of 500 ft}; may be empty
 * @param measure what the quantities count
 * @param status new, there already, or the work of taking it out
 * @param comesWith whether it usually comes with the main thing of its kind, so that a price for
 *     each of the kind has it in
 * @param shares who caused how much
 * @param rule the rules that counted it
 */
public record TakeoffLine(
    TakeoffKind kind,
    Optional<String> item,
    String text,
    double drawn,
    double bought,
    String boughtAs,
    Quote.Basis measure,
    Status status,
    boolean comesWith,
    Nature nature,
    List<Share> shares,
    List<TakeoffRule> rules) {
  public TakeoffLine {
    shares = List.copyOf(shares);
    rules = List.copyOf(rules);
  }

  /** Ids of the drawn things that caused it, each once. */
  public List<String> causes() {
    return shares.stream().flatMap(s -> s.causes().stream()).distinct().toList();
  }

  /** Whether money is spent on it. */
  public boolean costs() {
    return status != Status.HAVE;
  }

  TakeoffLine buying(double quantity, String as) {
    return new TakeoffLine(
        kind, item, text, drawn, quantity, as, measure, status, comesWith, nature, shares, rules);
  }
}
