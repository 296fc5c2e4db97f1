package tankyard.engine.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads and writes an amount as a person types it: {@code 2000 ft}, {@code 2,000 ft}, {@code 0.3
 * mi}, {@code 1 1/2 in}, {@code 5 ft 6 in}, {@code 216 bbl/d}, {@code 36 API}, {@code 5 %}.
 */
public final class AmountText {
  private static final String NUMBER =
      "[-+]?(?:\\d{1,3}(?:,\\d{3})+|\\d+)?(?:\\.\\d+)?(?:[eE][-+]?\\d+)?";
  private static final String FRACTION = "(?:(\\d+)\\s+)?(\\d+)/(\\d+)";
  private static final Pattern PLAIN = Pattern.compile("(" + NUMBER + ")\\s*(.*)");
  private static final Pattern MIXED = Pattern.compile("([-+]?)" + FRACTION + "\\s*(.*)");
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile(
          "([-+]?\\d+)\\s*(?:ft|'|feet|foot)\\s*(\\d+(?:\\.\\d+)?|"
              + FRACTION
              + ")\\s*(?:in|\"|inches|inch)");

  private AmountText() {}

  /**
   * Reads an amount.
   *
   * @param bare the unit meant where none is typed
   * @throws AmountFormatException naming what was typed and what is accepted
   */
  public static Amount parse(String text, Dimension dimension, Unit bare) {
    String typed = text.strip().replace('\u2212', '-').replaceAll("\\s+", " ");
    if (typed.isEmpty()) {
      throw new AmountFormatException("Nothing typed. " + accepted(dimension, bare));
    }
    boolean isLength = dimension == Dimension.LENGTH || dimension == Dimension.ELEVATION;
    Matcher feet = FEET_AND_INCHES.matcher(typed);
    if (isLength && feet.matches()) {
      return feetAndInches(feet, dimension);
    }
    Matcher mixed = MIXED.matcher(typed);
    if (mixed.matches()) {
      double value = fraction(mixed.group(2), mixed.group(3), mixed.group(4), typed);
      return new Amount(
          mixed.group(1).equals("-") ? -value : value,
          unit(mixed.group(5), dimension, bare, typed));
    }
    Matcher plain = PLAIN.matcher(typed);
    if (!plain.matches() || plain.group(1).isEmpty() || !plain.group(1).matches(".*\\d.*")) {
      throw new AmountFormatException(
          "\"" + typed + "\" is no number. " + accepted(dimension, bare));
    }
    double value = Double.parseDouble(plain.group(1).replace(",", ""));
    if (!Double.isFinite(value)) {
      throw new AmountFormatException("\"" + typed + "\" is too large a number.");
    }
    return new Amount(value, unit(plain.group(2), dimension, bare, typed));
  }

  /** The value as short as it can be written without loss, a space and the symbol. */
  public static String print(Amount amount) {
    String number = Figures.exact(amount.value());
    String symbol = amount.unit().symbol();
    return symbol.isEmpty() ? number : number + " " + symbol;
  }

  private static Amount feetAndInches(Matcher m, Dimension dimension) {
    double feet = Double.parseDouble(m.group(1));
    double inches =
        m.group(4) == null
            ? Double.parseDouble(m.group(2))
            : fraction(m.group(3), m.group(4), m.group(5), m.group());
    double value = feet + (m.group(1).startsWith("-") ? -inches : inches) / 12;
    return new Amount(value, dimension == Dimension.LENGTH ? Unit.FOOT : Unit.ELEVATION_FOOT);
  }

  private static double fraction(String whole, String over, String under, String typed) {
    double bottom = Double.parseDouble(under);
    if (bottom == 0) {
      throw new AmountFormatException("\"" + typed + "\" divides by zero.");
    }
    return (whole == null ? 0 : Double.parseDouble(whole)) + Double.parseDouble(over) / bottom;
  }

  private static Unit unit(String symbol, Dimension dimension, Unit bare, String typed) {
    if (symbol.isBlank()) {
      return bare;
    }
    return Unit.find(symbol, dimension)
        .orElseThrow(
            () ->
                new AmountFormatException(
                    "\""
                        + symbol.strip()
                        + "\" in \""
                        + typed
                        + "\" is no unit of "
                        + dimension.words()
                        + ". "
                        + accepted(dimension, bare)));
  }

  private static String accepted(Dimension dimension, Unit bare) {
    String symbols = String.join(", ", Unit.symbols(dimension));
    String plain =
        bare.symbol().isEmpty() ? "A number" : "A number (taken as " + bare.symbol() + ")";
    return plain + (symbols.isEmpty() ? "." : " or one with a unit: " + symbols + ".");
  }
}
