package tankyard.engine.catalog.csv;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import tankyard.engine.catalog.Price;
import tankyard.engine.lease.Quote;

/** Rows of a price list. */
final class PriceRows {
  private PriceRows() {}

  static Price price(Row row) {
    return new Price(
        row.text("item"),
        row.word("basis", Quote.Basis.class),
        money(row),
        row.text("currency"),
        date(row),
        row.text("vendor"),
        invented(row));
  }

  private static boolean invented(Row row) {
    String typed = row.text("invented");
    if (!typed.equals("yes") && !typed.equals("no")) {
      throw row.wrong("\"invented\" is \"" + typed + "\"; it must be yes or no.");
    }
    return typed.equals("yes");
  }

  private static BigDecimal money(Row row) {
    String typed = row.text("price");
    try {
      return new BigDecimal(typed);
    } catch (NumberFormatException e) {
      throw row.wrong("\"price\" is \"" + typed + "\"; it must be a number such as 1250.00.");
    }
  }

  private static LocalDate date(Row row) {
    String typed = row.text("date");
    try {
      return LocalDate.parse(typed);
    } catch (DateTimeParseException e) {
      throw row.wrong("\"date\" is \"" + typed + "\"; it must be a day such as 2026-11-25.");
    }
  }
}
