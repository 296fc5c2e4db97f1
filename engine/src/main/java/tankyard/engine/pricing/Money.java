package tankyard.engine.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;

/** Arithmetic with money: cents, half up. */
final class Money {
  static final BigDecimal NOTHING = BigDecimal.ZERO.setScale(2);

  private Money() {}

  static BigDecimal cents(BigDecimal amount) {
    return amount.setScale(2, RoundingMode.HALF_UP);
  }

  static BigDecimal times(BigDecimal price, double quantity) {
    return cents(price.multiply(BigDecimal.valueOf(quantity)));
  }

  static BigDecimal sum(Collection<BigDecimal> amounts) {
    return amounts.stream().reduce(NOTHING, BigDecimal::add);
  }

  /** To the hundredth, as it is printed. */
  static double quantity(double quantity) {
    return BigDecimal.valueOf(quantity).setScale(2, RoundingMode.HALF_UP).doubleValue();
  }
}
