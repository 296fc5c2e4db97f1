package tankyard.engine.pricing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import tankyard.engine.catalog.Sundry.Nature;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Status;
import tankyard.engine.takeoff.Share;
import tankyard.engine.takeoff.TakeoffKind;

/**
 * One line of the bill.
 *
 * @param kind of takeoff line; empty for a quote that stands by itself or covers several kinds
 * @param item catalogue id, if it is one
 * @param unitPrice empty where there is none
 * @param total what is added up; empty where nothing is
 * @param worth what a thing that is there already would cost at the price list
 * @param quotedBy id of the quote that prices it, or that it is in
 * @param note what must be said with it; may be empty
 * @param shares who caused how much
 */
public record BillLine(
    State state,
    String text,
    Optional<TakeoffKind> kind,
    Optional<String> item,
    double quantity,
    Quote.Basis unit,
    Optional<BigDecimal> unitPrice,
    Optional<BigDecimal> total,
    Optional<BigDecimal> worth,
    String vendor,
    Optional<LocalDate> date,
    boolean invented,
    boolean stale,
    Status status,
    Nature nature,
    Optional<String> quotedBy,
    String note,
    List<Share> shares) {

  /** How a line stands in the sum. */
  public enum State {
    /** It has a total. */
    PRICED("priced"),
    /** Another line's price has it in. */
    INCLUDED("in a quote"),
    /** Nobody gave a price. */
    MISSING("no price"),
    /** It is there already. */
    HAVE("have it");

    private final String words;

    State(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  public BillLine {
    shares = List.copyOf(shares);
    if ((state == State.PRICED) != total.isPresent()) {
      throw new IllegalArgumentException("A line has a total where it is priced, and only there");
    }
  }

  /** Ids of the drawn things that caused it, each once. */
  public List<String> causes() {
    return shares.stream().flatMap(s -> s.causes().stream()).distinct().toList();
  }
}
