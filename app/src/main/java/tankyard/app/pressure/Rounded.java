package tankyard.app.pressure;

import java.util.List;
import tankyard.app.figures.Digits;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.window.PressureLimit;

/**
 * Pressures as digits. A limit is rounded to its safe side, as the engine says; the rest to the
 * nearest.
 */
record Rounded(Unit unit) {

  static Rounded in(UnitSystem units) {
    return new Rounded(units.unit(Dimension.PRESSURE));
  }

  double value(Pressure pressure) {
    return pressure.in(unit);
  }

  String near(double value) {
    return Figures.decimals(value, decimals(value));
  }

  /** With a decimal more, so that parts that are added up give the sum beside them. */
  String finer(double value) {
    return Figures.decimals(value, decimals(value) + 1);
  }

  /** To the side that keeps a limit. */
  String towards(double value, Rounding side) {
    int decimals = decimals(value);
    return Figures.decimals(side.round(value, decimals), decimals);
  }

  /** What the gauge must reach or may not pass, so that following the digits keeps the limit. */
  String limit(PressureLimit limit) {
    double value = value(limit.gauge().value());
    int decimals = decimals(value);
    return Figures.decimals(limit.rounding().round(value, decimals), decimals);
  }

  private int decimals(double value) {
    return Math.min(1, Digits.decimals(unit, List.of(value)));
  }

  String withUnit(String digits) {
    return digits + " " + unit.symbol();
  }
}
