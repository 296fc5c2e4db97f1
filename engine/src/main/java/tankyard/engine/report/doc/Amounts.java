package tankyard.engine.report.doc;

import java.math.BigDecimal;
import java.util.Locale;

/** Money in a table. */
final class Amounts {
  private Amounts() {}

  /** For example {@code 83,677.29}. */
  static String digits(BigDecimal amount) {
    return String.format(Locale.ROOT, "%,.2f", amount);
  }
}
