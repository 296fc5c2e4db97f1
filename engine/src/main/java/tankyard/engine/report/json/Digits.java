package tankyard.engine.report.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as they stand in the document. */
final class Digits {
  /** Far more than any of them means, and few enough to read. */
  private static final MathContext TEN = new MathContext(10, RoundingMode.HALF_UP);

  private Digits() {}

  /** The number's text; {@code null} where it is no number. */
  static String of(double value) {
    if (!Double.isFinite(value)) {
      return "null";
    }
    BigDecimal rounded = new BigDecimal(value).round(TEN);
    return rounded.signum() == 0 ? "0" : plain(rounded.stripTrailingZeros());
  }

  private static String plain(BigDecimal number) {
    int size = number.precision() - number.scale();
    return size > 15 || size < -6 ? number.toString() : number.toPlainString();
  }
}
