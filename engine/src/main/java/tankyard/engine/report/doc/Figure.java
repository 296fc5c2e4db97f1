package tankyard.engine.report.doc;

import tankyard.engine.units.Figures;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/** A sort of number on a report: in which unit it is shown, and to how many decimals. */
public enum Figure {
  /** A pressure somebody reads off a gauge or screws a regulator to. */
  READING(Unit.PSI, 1, Unit.KILOPASCAL, 0),
  /** A part of such a pressure. */
  PART(Unit.PSI, 2, Unit.KILOPASCAL, 1),
  /** A pressure beside which a psi is nothing. */
  HIGH(Unit.PSI, 0, Unit.KILOPASCAL, 0),
  /** A pressure under a tank's roof. */
  OUNCES(Unit.OUNCE_PER_SQUARE_INCH, 2, Unit.KILOPASCAL, 3),
  DISTANCE(Unit.FOOT, 0, Unit.METRE, 0),
  GROUND(Unit.SQUARE_FOOT, 0, Unit.SQUARE_METRE, 0),
  HEIGHT(Unit.FOOT, 2, Unit.METRE, 2),
  /** A height that is measured in inches. */
  SMALL(Unit.INCH, 1, Unit.MILLIMETRE, 0),
  /** A drop of one liquid in another. */
  DROP(Unit.MILLIMETRE, 2, Unit.MILLIMETRE, 2),
  RATE(Unit.BARREL_PER_DAY, 0, Unit.CUBIC_METRE_PER_DAY, 1),
  VOLUME(Unit.BARREL, 1, Unit.CUBIC_METRE, 1),
  DIRT(Unit.CUBIC_YARD, 0, Unit.CUBIC_METRE, 0),
  GAS(Unit.MCF_PER_DAY, 1, Unit.STANDARD_CUBIC_METRE_PER_DAY, 0),
  BREATH(Unit.CUBIC_FOOT_PER_HOUR, 0, Unit.STANDARD_CUBIC_METRE_PER_DAY, 0),
  SHARE(Unit.PERCENT, 0, Unit.PERCENT, 0),
  BORE(Unit.INCH, 1, Unit.MILLIMETRE, 0),
  BARRELS_A_FOOT(Unit.BARREL, 2, Unit.CUBIC_METRE, 3),
  WEIGHT(Unit.POUND, 0, Unit.KILOGRAM, 0),
  /** A weight that is set on a scale. */
  SCALE(Unit.POUND, 1, Unit.KILOGRAM, 2),
  PULL(Unit.POUND_FORCE, 1, Unit.NEWTON, 0),
  TIMES(Unit.ONE, 1, Unit.ONE, 1),
  TURNS(Unit.RPM, 0, Unit.RPM, 0),
  AMPS(Unit.AMPERE, 0, Unit.AMPERE, 0),
  PART_OF(Unit.PERCENT, 1, Unit.PERCENT, 1),
  HEAT(Unit.BTU_PER_HOUR, 0, Unit.KILOWATT, 1),
  FUEL(Unit.GALLON, 0, Unit.LITRE, 0),
  FUEL_A_BARREL(Unit.GALLON, 2, Unit.LITRE, 2),
  POWER(Unit.HORSEPOWER, 1, Unit.KILOWATT, 1),
  SPEED(Unit.FOOT_PER_SECOND, 2, Unit.METRE_PER_SECOND, 2),
  WARMTH(Unit.FAHRENHEIT, 0, Unit.CELSIUS, 0),
  THICKNESS(Unit.CENTIPOISE, 0, Unit.MILLIPASCAL_SECOND, 0),
  MONTHS(Unit.MONTH, 1, Unit.MONTH, 1),
  DAYS(Unit.DAY_UNIT, 1, Unit.DAY_UNIT, 1),
  HOURS(Unit.HOUR, 1, Unit.HOUR, 1),
  MINUTES(Unit.MINUTE, 0, Unit.MINUTE, 0);

  private final Unit field;
  private final int fieldDecimals;
  private final Unit metric;
  private final int metricDecimals;

  Figure(Unit field, int fieldDecimals, Unit metric, int metricDecimals) {
    this.field = field;
    this.fieldDecimals = fieldDecimals;
    this.metric = metric;
    this.metricDecimals = metricDecimals;
  }

  public Unit unit(UnitSystem units) {
    return units == UnitSystem.METRIC ? metric : field;
  }

  public int decimals(UnitSystem units) {
    return units == UnitSystem.METRIC ? metricDecimals : fieldDecimals;
  }

  /** The digits alone, for a column whose head has the unit. */
  public String digits(Quantity quantity, UnitSystem units) {
    return digits(quantity.si(), units, Rounding.NEAREST);
  }

  String digits(double si, UnitSystem units, Rounding rounding) {
    int decimals = decimals(units);
    return Figures.decimals(rounding.round(unit(units).fromSi(si), decimals), decimals);
  }

  /** Digits and unit, for a sentence. */
  public String words(Quantity quantity, UnitSystem units, Rounding rounding) {
    return digits(quantity.si(), units, rounding) + " " + unit(units).symbol();
  }
}
