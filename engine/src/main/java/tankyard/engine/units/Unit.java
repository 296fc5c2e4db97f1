package tankyard.engine.units;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A unit a person may type. Factors are exact by definition (NIST SP 811; the oil barrel is 42 US
 * gallons of 231 cubic inches) unless a line says otherwise.
 *
 * <p>The first unit of each dimension is the SI unit the engine computes in.
 */
public enum Unit {
  METRE(Dimension.LENGTH, "m", 1, "metre", "metres", "meter", "meters"),
  FOOT(Dimension.LENGTH, "ft", Unit.FT, "'", "foot", "feet"),
  INCH(Dimension.LENGTH, "in", Unit.IN, "\"", "inch", "inches"),
  MILLIMETRE(Dimension.LENGTH, "mm", 1e-3),
  CENTIMETRE(Dimension.LENGTH, "cm", 1e-2),
  KILOMETRE(Dimension.LENGTH, "km", 1e3),
  YARD(Dimension.LENGTH, "yd", 3 * Unit.FT, "yard", "yards"),
  MILE(Dimension.LENGTH, "mi", 5280 * Unit.FT, "mile", "miles"),

  ELEVATION_METRE(Dimension.ELEVATION, "m", 1, "metre", "metres"),
  ELEVATION_FOOT(Dimension.ELEVATION, "ft", Unit.FT, "'", "foot", "feet"),

  SQUARE_METRE(Dimension.AREA, "m2", 1, "m²"),
  SQUARE_FOOT(Dimension.AREA, "ft2", Unit.FT * Unit.FT, "ft²", "sq ft"),
  SQUARE_INCH(Dimension.AREA, "in2", Unit.IN * Unit.IN, "in²", "sq in"),
  ACRE(Dimension.AREA, "acre", 43560 * Unit.FT * Unit.FT, "acres"),

  CUBIC_METRE(Dimension.VOLUME, "m3", 1, "m³"),
  BARREL(Dimension.VOLUME, "bbl", Unit.BBL, "barrel", "barrels", "bbls"),
  GALLON(Dimension.VOLUME, "gal", Unit.GAL, "gallon", "gallons"),
  CUBIC_FOOT(Dimension.VOLUME, "ft3", Unit.FT * Unit.FT * Unit.FT, "ft³", "cu ft"),
  CUBIC_YARD(Dimension.VOLUME, "yd3", 27 * Unit.FT * Unit.FT * Unit.FT, "yd³", "cu yd"),
  LITRE(Dimension.VOLUME, "L", 1e-3, "litre", "litres", "liter", "liters"),

  CUBIC_METRE_PER_SECOND(Dimension.LIQUID_RATE, "m3/s", 1, "m³/s"),
  BARREL_PER_DAY(Dimension.LIQUID_RATE, "bbl/d", Unit.BBL / Unit.DAY, "bpd", "bbl/day", "b/d"),
  GALLON_PER_MINUTE(Dimension.LIQUID_RATE, "gpm", Unit.GAL / 60, "gal/min"),
  BARREL_PER_HOUR(Dimension.LIQUID_RATE, "bbl/h", Unit.BBL / 3600, "bbl/hr", "bph"),
  CUBIC_METRE_PER_DAY(Dimension.LIQUID_RATE, "m3/d", 1 / Unit.DAY, "m³/d"),
  CUBIC_METRE_PER_HOUR(Dimension.LIQUID_RATE, "m3/h", 1.0 / 3600, "m³/h"),
  LITRE_PER_SECOND(Dimension.LIQUID_RATE, "L/s", 1e-3),
  LITRE_PER_MINUTE(Dimension.LIQUID_RATE, "L/min", 1e-3 / 60),
  CUBIC_FOOT_PER_SECOND(Dimension.LIQUID_RATE, "ft3/s", Unit.FT * Unit.FT * Unit.FT, "ft³/s"),

  STANDARD_CUBIC_METRE_PER_SECOND(Dimension.GAS_RATE, "Sm3/s", 1),
  MCF_PER_DAY(
      Dimension.GAS_RATE, "Mcf/d", 1000 * Unit.FT * Unit.FT * Unit.FT / Unit.DAY, "Mscf/d", "mcfd"),
  CUBIC_FOOT_PER_DAY(
      Dimension.GAS_RATE, "scf/d", Unit.FT * Unit.FT * Unit.FT / Unit.DAY, "cf/d", "scfd"),
  CUBIC_FOOT_PER_HOUR(
      Dimension.GAS_RATE, "scf/h", Unit.FT * Unit.FT * Unit.FT / 3600, "cf/h", "scfh"),
  STANDARD_CUBIC_METRE_PER_DAY(Dimension.GAS_RATE, "Sm3/d", 1 / Unit.DAY),

  PASCAL(Dimension.PRESSURE, "Pa", 1),
  PSI(Dimension.PRESSURE, "psi", Unit.PSI_PA, "psig", "lb/in2"),
  KILOPASCAL(Dimension.PRESSURE, "kPa", 1e3),
  MEGAPASCAL(Dimension.PRESSURE, "MPa", 1e6),
  BAR(Dimension.PRESSURE, "bar", 1e5, "barg"),
  OUNCE_PER_SQUARE_INCH(Dimension.PRESSURE, "oz/in2", Unit.PSI_PA / 16, "oz/in²", "osi"),
  /** Conventional inch of water, 4 degC (NIST SP 811). */
  INCH_OF_WATER(Dimension.PRESSURE, "inH2O", 249.08891, "in H2O", "in water"),
  /** Conventional foot of water, 4 degC (NIST SP 811). */
  FOOT_OF_WATER(Dimension.PRESSURE, "ftH2O", 2989.067, "ft H2O", "ft water"),

  KELVIN(Dimension.TEMPERATURE, "K", 1),
  FAHRENHEIT(Dimension.TEMPERATURE, "°F", 5.0 / 9, 459.67 * 5.0 / 9, "F", "degF", "deg F"),
  CELSIUS(Dimension.TEMPERATURE, "°C", 1, 273.15, "C", "degC", "deg C"),

  PASCAL_SECOND(Dimension.VISCOSITY, "Pa.s", 1, "Pa·s", "Pa s"),
  CENTIPOISE(Dimension.VISCOSITY, "cP", 1e-3, "cp"),
  MILLIPASCAL_SECOND(Dimension.VISCOSITY, "mPa.s", 1e-3, "mPa·s", "mPa s"),

  KILOGRAM_PER_CUBIC_METRE(Dimension.DENSITY, "kg/m3", 1, "kg/m³"),
  POUND_PER_CUBIC_FOOT(
      Dimension.DENSITY, "lb/ft3", Unit.LB / (Unit.FT * Unit.FT * Unit.FT), "lb/ft³"),
  GRAM_PER_CUBIC_CENTIMETRE(Dimension.DENSITY, "g/cc", 1e3, "g/cm3", "g/cm³"),

  SPECIFIC_GRAVITY(Dimension.GRAVITY, "SG", 1, "sg"),
  DEGREE_API(Dimension.GRAVITY, "°API", 1, "API", "degAPI") {
    @Override
    public double toSi(double api) {
      return 141.5 / (api + 131.5);
    }

    @Override
    public double fromSi(double sg) {
      return 141.5 / sg - 131.5;
    }
  },

  METRE_PER_SECOND(Dimension.SPEED, "m/s", 1),
  FOOT_PER_SECOND(Dimension.SPEED, "ft/s", Unit.FT, "fps"),
  FOOT_PER_MINUTE(Dimension.SPEED, "ft/min", Unit.FT / 60),

  SECOND(Dimension.TIME, "s", 1, "sec", "second", "seconds"),
  MINUTE(Dimension.TIME, "min", 60, "minute", "minutes"),
  HOUR(Dimension.TIME, "h", 3600, "hr", "hour", "hours"),
  DAY_UNIT(Dimension.TIME, "d", Unit.DAY, "day", "days"),
  /** A twelfth of a year of 365 days. */
  MONTH(Dimension.TIME, "mo", 365 * Unit.DAY / 12, "month", "months"),

  KILOGRAM(Dimension.MASS, "kg", 1),
  POUND(Dimension.MASS, "lb", Unit.LB, "lbs", "lbm"),

  NEWTON(Dimension.FORCE, "N", 1),
  POUND_FORCE(Dimension.FORCE, "lbf", Unit.LB * 9.80665, "lb"),

  WATT(Dimension.POWER, "W", 1),
  /** Mechanical horsepower, 550 ft lbf/s. */
  HORSEPOWER(Dimension.POWER, "hp", 550 * Unit.FT * Unit.LB * 9.80665),
  KILOWATT(Dimension.POWER, "kW", 1e3),
  /** Of the International Table, 1055.05585262 J. */
  BTU_PER_HOUR(Dimension.POWER, "Btu/h", 1055.05585262 / 3600, "BTU/h", "Btu/hr"),

  ONE(Dimension.FRACTION, "", 1),
  PERCENT(Dimension.FRACTION, "%", 0.01, "percent"),

  RADIAN_PER_SECOND(Dimension.ROTATION, "rad/s", 1),
  RPM(Dimension.ROTATION, "rpm", Math.PI / 30, "r/min"),

  /** Q = Av sqrt(dp / density), SI. */
  AV(Dimension.FLOW_COEFFICIENT, "Av", 1),
  /** US gpm of 60 degF water (999.016 kg/m3) at 1 psi. */
  CV(Dimension.FLOW_COEFFICIENT, "Cv", Unit.GAL / 60 / Math.sqrt(Unit.PSI_PA / 999.016)),
  /** m3/h of water at 1 bar; 0.865 Cv. */
  KV(Dimension.FLOW_COEFFICIENT, "Kv", 1.0 / 3600 / Math.sqrt(1e5 / 999.016)),

  PASCAL_PER_CUBIC_METRE_PER_SECOND(Dimension.WELL_RESISTANCE, "Pa/(m3/s)", 1),
  PSI_PER_BARREL_PER_DAY(
      Dimension.WELL_RESISTANCE,
      "psi/(bbl/d)",
      Unit.PSI_PA * Unit.DAY / Unit.BBL,
      "psi per bbl/d",
      "psi/bpd"),

  WATT_PER_SQUARE_METRE_KELVIN(Dimension.HEAT_LOSS, "W/(m2.K)", 1, "W/(m²·K)", "W/m2K"),
  /** The international table Btu, 1055.05585262 J (NIST SP 811). */
  BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT(
      Dimension.HEAT_LOSS,
      "Btu/(h.ft2.°F)",
      1055.05585262 / 3600 / (Unit.FT * Unit.FT) * 9 / 5,
      "Btu/(h·ft²·°F)",
      "Btu/h-ft2-F"),

  VOLT(Dimension.VOLTAGE, "V", 1, "volt", "volts"),
  KILOVOLT(Dimension.VOLTAGE, "kV", 1e3),

  AMPERE(Dimension.CURRENT, "A", 1, "amp", "amps", "ampere", "amperes");

  private static final double FT = 0.3048;
  private static final double IN = 0.0254;
  private static final double GAL = 0.003785411784;
  private static final double BBL = 42 * GAL;
  private static final double DAY = 86400;
  private static final double LB = 0.45359237;
  private static final double PSI_PA = LB * 9.80665 / (IN * IN);

  private final Dimension dimension;
  private final String symbol;
  private final double factor;
  private final double offset;
  private final List<String> otherNames;

  Unit(Dimension dimension, String symbol, double factor, String... otherNames) {
    this(dimension, symbol, factor, 0, otherNames);
  }

  Unit(Dimension dimension, String symbol, double factor, double offset, String... otherNames) {
    this.dimension = dimension;
    this.symbol = symbol;
    this.factor = factor;
    this.offset = offset;
    this.otherNames = List.of(otherNames);
  }

  public Dimension dimension() {
    return dimension;
  }

  /** How the unit is printed and stored; empty for a plain ratio. */
  public String symbol() {
    return symbol;
  }

  public double toSi(double value) {
    return value * factor + offset;
  }

  public double fromSi(double si) {
    return (si - offset) / factor;
  }

  /** The unit of this dimension with that symbol or other name; case counts only where it must. */
  public static Optional<Unit> find(String text, Dimension dimension) {
    String wanted = text.strip().replaceAll("\\s+", " ");
    List<Unit> units = Arrays.stream(values()).filter(u -> u.dimension == dimension).toList();
    Optional<Unit> exact = units.stream().filter(u -> u.named(wanted)).findFirst();
    return exact.isPresent()
        ? exact
        : units.stream().filter(u -> u.namedInAnyCase(wanted)).findFirst();
  }

  /** The symbols a person may type for that dimension, for error messages. */
  public static List<String> symbols(Dimension dimension) {
    return Arrays.stream(values())
        .filter(u -> u.dimension == dimension && !u.symbol.isEmpty())
        .map(Unit::symbol)
        .toList();
  }

  private boolean named(String text) {
    return symbol.equals(text) || otherNames.contains(text);
  }

  private boolean namedInAnyCase(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    return symbol.toLowerCase(Locale.ROOT).equals(lower)
        || otherNames.stream().anyMatch(n -> n.toLowerCase(Locale.ROOT).equals(lower));
  }
}
