package tankyard.engine.catalog;

import java.math.BigDecimal;
import java.time.LocalDate;
import tankyard.engine.lease.Quote;

/**
 * What one catalogue item costs.
 *
 * @param basis what one price buys
 * @param currency three letters
 * @param invented made up for the demonstration: good for trying the program, not for a bank
 */
public record Price(
    String itemId,
    Quote.Basis basis,
    BigDecimal price,
    String currency,
    LocalDate date,
    String vendor,
    boolean invented) {
  public Price {
    if (price.signum() < 0) {
      throw new IllegalArgumentException("The price of " + itemId + " is less than zero: " + price);
    }
    if (!currency.matches("[A-Z]{3}")) {
      throw new IllegalArgumentException(
          "The currency of " + itemId + " must be three capital letters, not \"" + currency + "\"");
    }
  }
}
