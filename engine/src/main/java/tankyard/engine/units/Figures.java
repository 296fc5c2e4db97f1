package tankyard.engine.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers as digits: plain notation, a point for the decimals, no grouping. */
public final class Figures {
  private static final double PLAIN_LIMIT = 1e12;

  private Figures() {}

  /** The shortest digits that read back as the same number. */
  public static String exact(double value) {
    if (value != 0 && (Math.abs(value) >= PLAIN_LIMIT || Math.abs(value) < 1e-9)) {
      return Double.toString(value);
    }
    return trim(new BigDecimal(Double.toString(value)).toPlainString());
  }

  /** So many significant figures, trailing zeros dropped: for inputs and workings. */
  public static String significant(double value, int figures) {
    if (value == 0 || !Double.isFinite(value)) {
      return value == 0 ? "0" : Double.toString(value);
    }
    BigDecimal rounded =
        new BigDecimal(value).round(new MathContext(figures, RoundingMode.HALF_UP));
    boolean plain = Math.abs(value) < PLAIN_LIMIT && Math.abs(value) >= 1e-7;
    return plain ? trim(rounded.toPlainString()) : rounded.stripTrailingZeros().toString();
  }

  /** So many decimals, kept even when zero: for columns. */
  public static String decimals(double value, int decimals) {
    BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }

  /** A whole number with a comma between thousands: for words. */
  public static String grouped(double value) {
    return String.format(Locale.ROOT, "%,.0f", value);
  }

  /** The same with so many decimals: for columns of large numbers. */
  public static String grouped(double value, int decimals) {
    BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
    return String.format(
        Locale.ROOT, "%,." + decimals + "f", rounded.signum() == 0 ? rounded.abs() : rounded);
  }

  private static String trim(String digits) {
    if (digits.indexOf('.') < 0) {
      return digits;
    }
    int end = digits.length();
    while (digits.charAt(end - 1) == '0') {
      end--;
    }
    String trimmed = digits.substring(0, digits.charAt(end - 1) == '.' ? end - 1 : end);
    return trimmed.equals("-0") ? "0" : trimmed;
  }
}
