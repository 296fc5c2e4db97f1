package tankyard.engine.pumps;

import tankyard.engine.units.Fraction;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Power;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Power to push a rate through a pressure: rate times pressure, over the efficiency of pump and
 * drive. In field units {@code hp = bbl/d psi / 58,775.5}, or {@code gpm psi / 1714.29}; the trade
 * rounds to 1714, which makes 58,766.
 */
public final class PumpPower {
  /** Plunger pump and belt; common practice, no source. */
  public static final Fraction USUAL_EFFICIENCY = Fraction.ofPercent(85);

  private static final Source SOURCE = Source.definition("power is rate times pressure");

  private PumpPower() {}

  /** At the shaft. */
  public static Computed<Power> brake(LiquidRate rate, Pressure rise, Fraction efficiency) {
    double watts = rate.cubicMetresPerSecond() * rise.pascals() / efficiency.efficiency();
    return Computed.of(
        Power.ofHorsepower(Unit.HORSEPOWER.fromSi(Math.max(0, watts))),
        () ->
            Working.of(
                "Power at the shaft",
                "P",
                "Q*dp/(58775.51*eta)",
                Unit.HORSEPOWER,
                SOURCE,
                Term.of("Q", "rate while it runs", rate, Unit.BARREL_PER_DAY),
                Term.of("dp", "pressure it adds", rise, Unit.PSI),
                Term.number("eta", "efficiency of pump and drive", efficiency.ratio())));
  }

  /** In the liquid. */
  public static Computed<Power> hydraulic(LiquidRate rate, Pressure rise) {
    return brake(rate, rise, Fraction.ofPercent(100));
  }

  /**
   * Electricity used, kWh.
   *
   * @param motorAndDrive efficiency between the meter and the shaft
   */
  public static double kilowattHours(Power brake, Fraction motorAndDrive, Time running) {
    return brake.watts() / 1000 / motorAndDrive.ratio() * running.toHours();
  }

  /** Hours a day a pump must run; above 24 it can't keep up. */
  public static Computed<Time> hoursADay(LiquidRate dailyWater, LiquidRate pump) {
    if (pump.cubicMetresPerSecond() == 0) {
      throw new IllegalArgumentException("A pump that delivers nothing never finishes");
    }
    return Computed.of(
        Time.ofHours(24 * dailyWater.toBarrelsPerDay() / pump.toBarrelsPerDay()),
        () ->
            Working.of(
                "Hours a day the pump runs",
                "t",
                "24*Qw/Qp",
                Unit.HOUR,
                Source.definition("volume over rate"),
                Term.of("Qw", "water a day", dailyWater, Unit.BARREL_PER_DAY),
                Term.of("Qp", "rate of the pump", pump, Unit.BARREL_PER_DAY)));
  }
}
