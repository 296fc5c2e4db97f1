package tankyard.app.pressure;

import java.util.List;
import tankyard.app.figures.Digits;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/**
 * Pressures as digits. They are rounded to the nearest tenth as everywhere else in the window, so
 * that one limit never shows as two numbers; the careful side is kept by the margin and by the
 * engine, which rounds the setting itself.
 */
record Rounded(Unit unit) {

  static Rounded in(UnitSystem units) {
    return new Rounded(units.unit(Dimension.PRESSURE));
  }

  double value(Pressure pressure) {
    return pressure.in(unit);
  }

  String near(double value) {
    return Figures.decimals(value, Math.min(1, Digits.decimals(unit, List.of(value))));
  }

  String withUnit(String digits) {
    return digits + " " + unit.symbol();
  }
}
