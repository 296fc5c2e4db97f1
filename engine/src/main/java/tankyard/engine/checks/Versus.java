package tankyard.engine.checks;

import tankyard.engine.units.Figures;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Unit;

/**
 * A value and its limit in words, with as many decimals as it takes to tell them apart: "443.7 bbl"
 * against "460 bbl", never "12 h" against "12 h".
 */
public record Versus(String value, String limit) {
  private static final int MOST_DECIMALS = 5;

  public static Versus of(Quantity value, Quantity limit, Unit unit, int decimals) {
    return of(value.in(unit), limit.in(unit), unit, decimals);
  }

  /** Both already in the unit. */
  public static Versus of(double value, double limit, Unit unit, int decimals) {
    int places = decimals;
    while (places < MOST_DECIMALS
        && value != limit
        && Figures.decimals(value, places).equals(Figures.decimals(limit, places))) {
      places++;
    }
    return new Versus(print(value, unit, places), print(limit, unit, places));
  }

  /** One number with its unit, trailing zeros dropped: "9 psi", "7.5 psi". */
  public static String print(double value, Unit unit, int decimals) {
    String digits = Figures.exact(Double.parseDouble(Figures.decimals(value, decimals)));
    return unit.symbol().isEmpty() ? digits : digits + " " + unit.symbol();
  }

  public static String print(Quantity value, Unit unit, int decimals) {
    return print(value.in(unit), unit, decimals);
  }
}
