package tankyard.app.figures;

import java.util.Collection;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;

/**
 * How many decimals a number is shown with. Two or three figures are what a field sum is good for;
 * below 100 psi a pressure keeps a tenth, since that is how finely a regulator is set and a gauge
 * is read.
 */
public final class Digits {
  private Digits() {}

  /** The decimals for a row of numbers, so that their points line up. */
  public static int decimals(Unit unit, Collection<Double> values) {
    double largest = values.stream().mapToDouble(Math::abs).max().orElse(0);
    if (unit == Unit.PSI) {
      return largest < 100 ? 1 : 0;
    }
    if (unit.dimension() == Dimension.GRAVITY && unit != Unit.DEGREE_API) {
      return 3;
    }
    return largest >= 100 ? 0 : largest >= 1 ? 1 : 2;
  }

  /** A number by itself, for example {@code 14.5}. */
  public static String of(Unit unit, double value) {
    return Figures.decimals(value, decimals(unit, java.util.List.of(value)));
  }

  /** A number by itself with its unit, for example {@code 14.5 psi}. */
  public static String withUnit(Unit unit, double value) {
    return withUnit(unit, value, Rounding.NEAREST);
  }

  /** A number by itself with its unit, rounded to this side. */
  public static String withUnit(Unit unit, double value, Rounding rounding) {
    String digits = of(unit, rounding.round(value, decimals(unit, java.util.List.of(value))));
    return unit.symbol().isEmpty() ? digits : digits + " " + unit.symbol();
  }
}
