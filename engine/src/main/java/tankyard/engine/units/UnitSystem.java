package tankyard.engine.units;

import java.util.EnumMap;
import java.util.Map;

/** The units results are shown in, and that a bare typed number is taken in. */
public enum UnitSystem {
  FIELD("Field units") {
    @Override
    void fill(Map<Dimension, Unit> units) {
      units.put(Dimension.LENGTH, Unit.FOOT);
      units.put(Dimension.ELEVATION, Unit.ELEVATION_FOOT);
      units.put(Dimension.AREA, Unit.SQUARE_FOOT);
      units.put(Dimension.VOLUME, Unit.BARREL);
      units.put(Dimension.LIQUID_RATE, Unit.BARREL_PER_DAY);
      units.put(Dimension.GAS_RATE, Unit.MCF_PER_DAY);
      units.put(Dimension.PRESSURE, Unit.PSI);
      units.put(Dimension.TEMPERATURE, Unit.FAHRENHEIT);
      units.put(Dimension.VISCOSITY, Unit.CENTIPOISE);
      units.put(Dimension.DENSITY, Unit.POUND_PER_CUBIC_FOOT);
      units.put(Dimension.GRAVITY, Unit.SPECIFIC_GRAVITY);
      units.put(Dimension.SPEED, Unit.FOOT_PER_SECOND);
      units.put(Dimension.TIME, Unit.HOUR);
      units.put(Dimension.MASS, Unit.POUND);
      units.put(Dimension.FORCE, Unit.POUND_FORCE);
      units.put(Dimension.POWER, Unit.HORSEPOWER);
      units.put(Dimension.FRACTION, Unit.PERCENT);
      units.put(Dimension.ROTATION, Unit.RPM);
      units.put(Dimension.FLOW_COEFFICIENT, Unit.CV);
      units.put(Dimension.WELL_RESISTANCE, Unit.PSI_PER_BARREL_PER_DAY);
      units.put(Dimension.HEAT_LOSS, Unit.BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT);
      units.put(Dimension.VOLTAGE, Unit.VOLT);
      units.put(Dimension.CURRENT, Unit.AMPERE);
    }
  },
  METRIC("Metric units") {
    @Override
    void fill(Map<Dimension, Unit> units) {
      FIELD.fill(units);
      units.put(Dimension.LENGTH, Unit.METRE);
      units.put(Dimension.ELEVATION, Unit.ELEVATION_METRE);
      units.put(Dimension.AREA, Unit.SQUARE_METRE);
      units.put(Dimension.VOLUME, Unit.CUBIC_METRE);
      units.put(Dimension.LIQUID_RATE, Unit.CUBIC_METRE_PER_DAY);
      units.put(Dimension.GAS_RATE, Unit.STANDARD_CUBIC_METRE_PER_DAY);
      units.put(Dimension.PRESSURE, Unit.KILOPASCAL);
      units.put(Dimension.TEMPERATURE, Unit.CELSIUS);
      units.put(Dimension.VISCOSITY, Unit.MILLIPASCAL_SECOND);
      units.put(Dimension.DENSITY, Unit.KILOGRAM_PER_CUBIC_METRE);
      units.put(Dimension.SPEED, Unit.METRE_PER_SECOND);
      units.put(Dimension.MASS, Unit.KILOGRAM);
      units.put(Dimension.FORCE, Unit.NEWTON);
      units.put(Dimension.POWER, Unit.KILOWATT);
      units.put(Dimension.FLOW_COEFFICIENT, Unit.KV);
      units.put(Dimension.HEAT_LOSS, Unit.WATT_PER_SQUARE_METRE_KELVIN);
    }
  };

  private final String words;
  private final Map<Dimension, Unit> units = new EnumMap<>(Dimension.class);

  UnitSystem(String words) {
    this.words = words;
    fill(units);
  }

  abstract void fill(Map<Dimension, Unit> target);

  public String words() {
    return words;
  }

  public Unit unit(Dimension dimension) {
    return units.get(dimension);
  }

  /** For example {@code 7.51 psi}: so many significant figures in this system's unit. */
  public String print(Quantity quantity, int figures) {
    return print(quantity.si(), quantity.dimension(), figures);
  }

  public String print(double si, Dimension dimension, int figures) {
    Unit unit = unit(dimension);
    String number = Figures.significant(unit.fromSi(si), figures);
    return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
  }
}
