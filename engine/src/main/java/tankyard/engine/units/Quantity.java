package tankyard.engine.units;

/** A typed amount of one dimension. Each kind is a record of its own, so two can't be confused. */
public sealed interface Quantity
    permits Area,
        Current,
        Cv,
        Elevation,
        Force,
        Fraction,
        GasRate,
        Gravity,
        HeatLoss,
        Length,
        LiquidRate,
        Mass,
        Power,
        Pressure,
        Rotation,
        Speed,
        Temperature,
        Time,
        Viscosity,
        Voltage,
        Volume,
        WellResistance {

  /** The number and unit as a person typed it. */
  Amount typed();

  /** The value in the SI unit of its dimension. */
  default double si() {
    return typed().si();
  }

  default double in(Unit unit) {
    return typed().in(unit);
  }

  default Dimension dimension() {
    return typed().unit().dimension();
  }
}
