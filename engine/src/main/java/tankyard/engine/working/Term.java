package tankyard.engine.working;

import java.util.Objects;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Unit;

/**
 * One number put into a formula.
 *
 * @param symbol as written in the formula: letters, digits and underscores
 * @param name what it is, in words
 * @param value in {@code unit}
 */
public record Term(String symbol, String name, double value, Unit unit) {
  /** Inputs of a working are printed to this many significant figures. */
  static final int FIGURES = 7;

  public Term {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(unit, "unit");
    if (!symbol.matches("[A-Za-z][A-Za-z0-9_]*")) {
      throw new IllegalArgumentException("\"" + symbol + "\" can't stand in a formula");
    }
  }

  public static Term of(String symbol, String name, double value, Unit unit) {
    return new Term(symbol, name, value, unit);
  }

  public static Term of(String symbol, String name, Quantity quantity, Unit unit) {
    return new Term(symbol, name, quantity.in(unit), unit);
  }

  /** A pure number. */
  public static Term number(String symbol, String name, double value) {
    return new Term(symbol, name, value, Unit.ONE);
  }

  /** The digits a reader sees and can type into a calculator. */
  public String digits() {
    return Figures.significant(value, FIGURES);
  }

  /** For example {@code Q = 6.3 gpm (design water rate)}. */
  public String line() {
    String withUnit = unit.symbol().isEmpty() ? digits() : digits() + " " + unit.symbol();
    return symbol + " = " + withUnit + " (" + name + ")";
  }
}
