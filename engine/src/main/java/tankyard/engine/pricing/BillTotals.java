package tankyard.engine.pricing;

import java.math.BigDecimal;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * The sums.
 *
 * @param contingencyRate on goods and work
 * @param taxRate on goods
 * @param have what is there already, at the price list
 * @param unpriced lines without a price, which the total is without
 * @param stale lines whose price is a year old or more
 * @param invented lines whose price is made up
 */
public record BillTotals(
    BigDecimal goods,
    BigDecimal work,
    Fraction contingencyRate,
    BigDecimal contingency,
    Fraction taxRate,
    BigDecimal tax,
    BigDecimal total,
    BigDecimal have,
    int unpriced,
    int stale,
    int invented,
    String currency) {

  static final Source SOURCE =
      Source.commonPractice("contingency 10 to 15 % on firm quotes, 25 % on guesses; tax on goods");

  /** Goods and work before contingency and tax. */
  public BigDecimal subtotal() {
    return goods.add(work);
  }

  public Working working() {
    return Working.of(
        "Total of the bill, " + currency,
        "T",
        "(G+L)*(1+c)+G*t",
        Unit.ONE,
        SOURCE,
        Term.number("G", "goods, " + currency, goods.doubleValue()),
        Term.number("L", "work, " + currency, work.doubleValue()),
        Term.number("c", "contingency", contingencyRate.ratio()),
        Term.number("t", "tax on goods", taxRate.ratio()));
  }

  /** For example {@code 83,677.29 USD, without 3 unpriced lines}. */
  public String words() {
    String sum = String.format(java.util.Locale.ROOT, "%,.2f %s", total, currency);
    return unpriced == 0
        ? sum
        : sum + ", without " + unpriced + " unpriced line" + (unpriced == 1 ? "" : "s");
  }
}
