package tankyard.app.field;

import java.util.Arrays;
import java.util.function.Function;
import tankyard.engine.units.Amount;
import tankyard.engine.units.Area;
import tankyard.engine.units.Current;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Force;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.HeatLoss;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Mass;
import tankyard.engine.units.Power;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Rotation;
import tankyard.engine.units.Speed;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Time;
import tankyard.engine.units.Viscosity;
import tankyard.engine.units.Voltage;
import tankyard.engine.units.Volume;
import tankyard.engine.units.WellResistance;

/** Which record holds an amount of which dimension. */
enum QuantityKind {
  AREA(Area.class, Dimension.AREA, Area::new),
  CURRENT(Current.class, Dimension.CURRENT, Current::new),
  CV(Cv.class, Dimension.FLOW_COEFFICIENT, Cv::new),
  ELEVATION(Elevation.class, Dimension.ELEVATION, Elevation::new),
  FORCE(Force.class, Dimension.FORCE, Force::new),
  FRACTION(Fraction.class, Dimension.FRACTION, Fraction::new),
  GAS_RATE(GasRate.class, Dimension.GAS_RATE, GasRate::new),
  GRAVITY(Gravity.class, Dimension.GRAVITY, Gravity::new),
  HEAT_LOSS(HeatLoss.class, Dimension.HEAT_LOSS, HeatLoss::new),
  LENGTH(Length.class, Dimension.LENGTH, Length::new),
  LIQUID_RATE(LiquidRate.class, Dimension.LIQUID_RATE, LiquidRate::new),
  MASS(Mass.class, Dimension.MASS, Mass::new),
  POWER(Power.class, Dimension.POWER, Power::new),
  PRESSURE(Pressure.class, Dimension.PRESSURE, Pressure::new),
  ROTATION(Rotation.class, Dimension.ROTATION, Rotation::new),
  SPEED(Speed.class, Dimension.SPEED, Speed::new),
  TEMPERATURE(Temperature.class, Dimension.TEMPERATURE, Temperature::new),
  TIME(Time.class, Dimension.TIME, Time::new),
  VISCOSITY(Viscosity.class, Dimension.VISCOSITY, Viscosity::new),
  VOLTAGE(Voltage.class, Dimension.VOLTAGE, Voltage::new),
  VOLUME(Volume.class, Dimension.VOLUME, Volume::new),
  WELL_RESISTANCE(WellResistance.class, Dimension.WELL_RESISTANCE, WellResistance::new);

  private final Class<? extends Quantity> type;
  private final Dimension dimension;
  private final Function<Amount, ? extends Quantity> make;

  QuantityKind(
      Class<? extends Quantity> type,
      Dimension dimension,
      Function<Amount, ? extends Quantity> make) {
    this.type = type;
    this.dimension = dimension;
    this.make = make;
  }

  static QuantityKind of(Class<?> type) {
    return Arrays.stream(values())
        .filter(kind -> kind.type.equals(type))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(type + " is no quantity"));
  }

  static QuantityKind of(Dimension dimension) {
    return Arrays.stream(values())
        .filter(kind -> kind.dimension == dimension)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(dimension + " has no record"));
  }

  Dimension dimension() {
    return dimension;
  }

  /** Throws IllegalArgumentException with words for the reader where the amount can't be. */
  Quantity quantity(Amount amount) {
    return make.apply(amount);
  }
}
