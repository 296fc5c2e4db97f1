package tankyard.engine.lease;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Fraction;

/**
 * A price somebody gave.
 *
 * @param covers what the price stands for: catalogue ids, or kinds of takeoff line such as {@code
 *     flow-line-pipe} (see {@code takeoff.TakeoffKind}); the takeoff lines it covers are priced by
 *     it and no other way
 * @param basis what one price buys
 * @param quantity how many, where the drawing does not say; for a lot it is one
 * @param waste added to a length before it is bought
 * @param currency three letters
 */
public record Quote(
    String id,
    String text,
    List<String> covers,
    Basis basis,
    BigDecimal price,
    String currency,
    Optional<Double> quantity,
    Optional<Fraction> waste,
    String vendor,
    Optional<LocalDate> date) {

  /** What one price buys. */
  public enum Basis {
    EACH("each"),
    FOOT("per ft"),
    METRE("per m"),
    BARREL("per bbl"),
    CUBIC_YARD("per yd3"),
    DAY("per day"),
    LOT("lot");

    private final String words;

    Basis(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  public Quote {
    covers = List.copyOf(covers);
    if (price.signum() < 0) {
      throw new IllegalArgumentException(
          "The price of \"" + text + "\" is less than zero: " + price);
    }
  }
}
