package tankyard.engine.vessels;

import tankyard.engine.units.Fraction;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Power;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * What a heater-treater burns. A barrel of water takes 350 Btu for each degree Fahrenheit, a barrel
 * of oil 150: water that goes through with the oil is most of the bill, so it is knocked out first.
 * Heat that is lost through the shell is part of the efficiency.
 */
public final class HeatDuty {
  /** From memory: a barrel of water weighs 350 lb; half as much heat for a pound of oil. */
  private static final double OIL_BTU = 150;

  private static final double WATER_BTU = 350;

  private static final double GAS_BTU_PER_SCF = 1000;
  private static final double PROPANE_BTU_PER_GALLON = 91_500;
  private static final Source DUTY =
      Source.memory("heat to warm a barrel: oil 150, water 350 Btu/°F");
  private static final Source GAS = Source.memory("lease gas, 1,000 Btu/scf");
  private static final Source PROPANE = Source.memory("propane, 91,500 Btu/gal");

  private HeatDuty() {}

  /**
   * What the burner gives off, as long as it warms; nothing where what comes in is warm enough.
   *
   * @param oil through the treater
   * @param water through it, which is what was not knocked out before
   * @param efficiency from burner to liquid, above 0 and no more than 1
   */
  public static Computed<Power> of(
      LiquidRate oil, LiquidRate water, Temperature from, Temperature to, Fraction efficiency) {
    double warmed = Math.max(0, to.toFahrenheit() - from.toFahrenheit());
    double btu =
        (oil.toBarrelsPerDay() * OIL_BTU + water.toBarrelsPerDay() * WATER_BTU)
            * warmed
            / 24
            / efficiency.efficiency();
    return Computed.of(
        Power.of(btu, Unit.BTU_PER_HOUR),
        () ->
            Working.of(
                "Heat the burner gives off",
                "H",
                "(Qo*150+Qw*350)*max(T-T1,0)/24/eta",
                Unit.BTU_PER_HOUR,
                DUTY,
                Term.of("Qo", "oil through the treater", oil, Unit.BARREL_PER_DAY),
                Term.of("Qw", "water through it", water, Unit.BARREL_PER_DAY),
                Term.of("T", "treating temperature", to, Unit.FAHRENHEIT),
                Term.of("T1", "as it comes in", from, Unit.FAHRENHEIT),
                Term.number("eta", "from burner to liquid", efficiency.ratio())));
  }

  /** Lease gas that it burns. */
  public static Computed<GasRate> gas(Power duty) {
    return Computed.of(
        GasRate.ofMcfPerDay(24 * duty.in(Unit.BTU_PER_HOUR) / GAS_BTU_PER_SCF / 1000),
        () ->
            Working.of(
                "Gas burnt",
                "G",
                "24*H/1000/1000",
                Unit.MCF_PER_DAY,
                GAS,
                Term.of("H", "heat the burner gives off", duty, Unit.BTU_PER_HOUR)));
  }

  /** Propane that it burns in so many days. */
  public static Computed<Volume> propane(Power duty, double days) {
    return Computed.of(
        Volume.of(24 * days * duty.in(Unit.BTU_PER_HOUR) / PROPANE_BTU_PER_GALLON, Unit.GALLON),
        () ->
            Working.of(
                "Propane burnt",
                "V",
                "24*t*H/91500",
                Unit.GALLON,
                PROPANE,
                Term.number("t", "days", days),
                Term.of("H", "heat the burner gives off", duty, Unit.BTU_PER_HOUR)));
  }
}
