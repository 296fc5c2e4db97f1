package tankyard.app.pressure;

import tankyard.app.figures.Digits;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/** Pressures as digits: what must be reached is rounded up, what must not be passed down. */
record Rounded(Unit unit) {
  /** Keeps 14.5 from becoming 14.6 by the last bit of a sum. */
  private static final double LAST_BITS = 1e-6;

  static Rounded in(UnitSystem units) {
    return new Rounded(units.unit(Dimension.PRESSURE));
  }

  double value(Pressure pressure) {
    return pressure.in(unit);
  }

  String up(double value) {
    double step = step(value);
    return digits(Math.ceil(value / step - LAST_BITS) * step, value);
  }

  String down(double value) {
    double step = step(value);
    return digits(Math.floor(value / step + LAST_BITS) * step, value);
  }

  String near(double value) {
    return digits(value, value);
  }

  String withUnit(String digits) {
    return digits + " " + unit.symbol();
  }

  private double step(double value) {
    return Math.pow(10, -decimals(value));
  }

  private int decimals(double value) {
    return Math.min(1, Digits.decimals(unit, java.util.List.of(value)));
  }

  private String digits(double rounded, double value) {
    return Figures.decimals(rounded, decimals(value));
  }
}
