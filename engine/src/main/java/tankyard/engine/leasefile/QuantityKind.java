package tankyard.engine.leasefile;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import tankyard.engine.units.Amount;
import tankyard.engine.units.Area;
import tankyard.engine.units.Current;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Elevation;
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
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Time;
import tankyard.engine.units.Viscosity;
import tankyard.engine.units.Voltage;
import tankyard.engine.units.Volume;
import tankyard.engine.units.WellResistance;

/**
 * One kind of quantity a lease file can hold.
 *
 * @param type its class
 * @param dimension what its units must measure
 * @param make puts a typed amount into it; refuses what can't be
 */
record QuantityKind<T extends Quantity>(
    Class<T> type, Dimension dimension, Function<Amount, T> make) {

  static final List<QuantityKind<?>> ALL =
      List.of(
          new QuantityKind<>(Area.class, Dimension.AREA, Area::new),
          new QuantityKind<>(Current.class, Dimension.CURRENT, Current::new),
          new QuantityKind<>(Cv.class, Dimension.FLOW_COEFFICIENT, Cv::new),
          new QuantityKind<>(Elevation.class, Dimension.ELEVATION, Elevation::new),
          new QuantityKind<>(Fraction.class, Dimension.FRACTION, Fraction::new),
          new QuantityKind<>(GasRate.class, Dimension.GAS_RATE, GasRate::new),
          new QuantityKind<>(Gravity.class, Dimension.GRAVITY, Gravity::new),
          new QuantityKind<>(HeatLoss.class, Dimension.HEAT_LOSS, HeatLoss::new),
          new QuantityKind<>(Length.class, Dimension.LENGTH, Length::new),
          new QuantityKind<>(LiquidRate.class, Dimension.LIQUID_RATE, LiquidRate::new),
          new QuantityKind<>(Mass.class, Dimension.MASS, Mass::new),
          new QuantityKind<>(Power.class, Dimension.POWER, Power::new),
          new QuantityKind<>(Pressure.class, Dimension.PRESSURE, Pressure::new),
          new QuantityKind<>(Rotation.class, Dimension.ROTATION, Rotation::new),
          new QuantityKind<>(Temperature.class, Dimension.TEMPERATURE, Temperature::new),
          new QuantityKind<>(Time.class, Dimension.TIME, Time::new),
          new QuantityKind<>(Viscosity.class, Dimension.VISCOSITY, Viscosity::new),
          new QuantityKind<>(Voltage.class, Dimension.VOLTAGE, Voltage::new),
          new QuantityKind<>(Volume.class, Dimension.VOLUME, Volume::new),
          new QuantityKind<>(WellResistance.class, Dimension.WELL_RESISTANCE, WellResistance::new));

  static Optional<QuantityKind<?>> of(Class<?> type) {
    return ALL.stream().filter(k -> k.type == type).findFirst();
  }
}
