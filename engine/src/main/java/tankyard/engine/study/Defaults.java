package tankyard.engine.study;

import java.util.Optional;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.Practice;
import tankyard.engine.lease.Site;
import tankyard.engine.lease.Tank;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.HeatLoss;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rotation;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Source;

/**
 * What is taken where nobody typed a value. Each use of one is listed as an {@link Assumption}; the
 * numbers are field habit, so they are few, round and here.
 */
public final class Defaults {
  static final Source HABIT = Source.commonPractice("field habit");

  public static final Fraction DESIGN_WATER = Fraction.ofRatio(2);
  public static final Pressure MARGIN = Pressure.ofPsi(1);
  public static final Fraction RELIEF_SHARE = Fraction.ofPercent(90);
  public static final Length DEPTH = Length.ofFeet(3);
  public static final Volume LOAD = Volume.ofBarrels(180);
  public static final Time ROAD_OUT = Time.ofDays(3);

  /** On the outside area of the pipe. Moist soil round a 2 in line takes about twice that. */
  public static final HeatLoss HEAT_LOSS = HeatLoss.ofBtuPerHourSquareFootFahrenheit(1);

  /** A load in half an hour. */
  public static final LiquidRate TRUCK_DRAWS = LiquidRate.of(360, Unit.BARREL_PER_HOUR);

  /** Of another lease's pump on the same well. */
  public static final Time OTHER_HOURS = Time.ofHours(24);

  public static final Time NIGHT_OUT = Time.ofHours(12);
  public static final Time REACTION = Time.ofMinutes(30);
  public static final Temperature GROUND_SUMMER = Temperature.ofFahrenheit(70);
  public static final Temperature GROUND_WINTER = Temperature.ofFahrenheit(45);
  public static final Time RUNS_PER_DAY = Time.ofHours(24);

  /** The peak of a half sine over its mean is pi; the trade says three. From memory. */
  public static final Fraction SURGE = Fraction.ofRatio(3);

  public static final Fraction DUMP_TRAVEL = tankyard.engine.valves.ValveLoss.USUAL_TRAVEL;

  /** What a flood of fresh water brings the brine of a separator to. */
  public static final Gravity OTHER_WATER = Gravity.of(1.01, Unit.SPECIFIC_GRAVITY);

  /** Share of water above which the water carries the oil. */
  public static final Fraction INVERSION =
      tankyard.engine.fluids.EmulsionSpec.USUAL.inversionWaterCut();

  public static final Pressure BUILD_UP = Pressure.ofPsi(1.5);
  public static final Length SALES_OUTLET = Length.ofFeet(1);
  public static final Length BERM_RAIN = Length.ofInches(0);
  public static final Length FREEBOARD = Length.ofFeet(0);
  public static final Length SWITCH_BELOW_LIP = Length.ofFeet(0.5);

  /** Pump-on as a share of the overflow's height. */
  public static final double PUMP_ON_SHARE = 0.5;

  /** Of the gas against air; what comes off oil at a battery is 0.65 to 0.9. */
  public static final Fraction GAS_GRAVITY = Fraction.ofRatio(0.75);

  /** Pump-off as a share of pump-on. */
  static final double PUMP_OFF_SHARE = 0.5;

  /** Three plungers at 300 rpm: the small injection pump of a lease. */
  public static final InjectionPump.Plungers PUMP_PLUNGERS = InjectionPump.Plungers.TRIPLEX;

  public static final Rotation PUMP_SPEED = Rotation.ofRpm(300);

  /** Share of what plungers sweep that leaks back; common practice, no source. */
  public static final Fraction PUMP_SLIP = Fraction.ofPercent(5);

  /** Four poles at 60 Hz, loaded; from memory. */
  public static final Rotation MOTOR_SPEED = Rotation.ofRpm(1750);

  /** Above sea level, for the air pressure on an open tank and on gas. */
  public static final Length ALTITUDE = Length.ofFeet(1000);

  public static final Fraction PUMP_EFFICIENCY = Fraction.ofPercent(85);

  /** Of the day: what is left is for repairs and growth. */
  public static final Fraction PUMP_SHARE = Fraction.ofPercent(90);

  /** Share of the time that the rate of a shared line is not passed. */
  public static final Fraction AT_ONCE = Fraction.ofPercent(95);

  /** Part of the water that a separator leaves in the oil; common practice, no source. */
  public static final Fraction TREATER_WATER = Fraction.ofPercent(5);

  /** From burner to liquid; from memory. */
  public static final Fraction TREATER_EFFICIENCY = Fraction.ofPercent(70);

  /** A gun barrel's leg over the height of its weir: as much again for its fittings. */
  public static final double LEG_TIMES = 2;

  private Defaults() {}

  static HeatLoss heatLoss(Practice practice) {
    return practice.heatLoss().orElse(HEAT_LOSS);
  }

  /** Of a gun barrel's leg, its fittings counted as pipe. */
  static Length legLength(GunBarrel barrel, Length weir) {
    return barrel.legLength().orElseGet(() -> Length.ofFeet(LEG_TIMES * weir.toFeet()));
  }

  static Fraction designWater(Practice practice) {
    return practice.designWater().orElse(DESIGN_WATER);
  }

  public static Pressure margin(Practice practice) {
    return practice.margin().orElse(MARGIN);
  }

  public static Fraction reliefShare(Practice practice) {
    return practice.reliefShare().orElse(RELIEF_SHARE);
  }

  public static Fraction pumpShare(Practice practice) {
    return practice.pumpShare().orElse(PUMP_SHARE);
  }

  static Fraction atOnce(Practice practice) {
    return practice.atOnce().orElse(AT_ONCE);
  }

  static Temperature groundSummer(Site site) {
    return site.groundSummer().orElse(GROUND_SUMMER);
  }

  static Temperature groundWinter(Site site) {
    return site.groundWinter().orElse(GROUND_WINTER);
  }

  static double metresDeep(Optional<Length> line, Practice practice) {
    return line.or(practice::depth).orElse(DEPTH).metres();
  }

  /** The nozzle a tank is sold or pumped from. */
  public static Length outletOf(Tank tank) {
    return tank.outletHeight().orElse(SALES_OUTLET);
  }
}
