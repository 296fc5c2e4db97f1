package tankyard.engine.study;

import java.util.OptionalDouble;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.Well;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.LiquidRate;

/**
 * What one well makes in a case, m3/s.
 *
 * @param oilDay day's average
 * @param waterDay day's average
 * @param gasDay day's average, standard m3/s; it follows the oil from case to case
 * @param running rate while the pump runs over the day's average
 * @param surge peak of the stroke over the rate while it runs
 * @param allOn whether the case has every well running
 * @param returned water of the lease brought back to the well, day and night; it is no water made
 */
record WellFlow(
    Well well,
    double oilDay,
    double waterDay,
    double gasDay,
    double running,
    double surge,
    boolean allOn,
    double returned) {

  static WellFlow of(Well well, DesignCase designCase) {
    double hours = well.runsPerDay().orElse(Defaults.RUNS_PER_DAY).toHours();
    return new WellFlow(
        well,
        well.oil().cubicMetresPerSecond() * designCase.oilFactor(),
        well.water().cubicMetresPerSecond() * designCase.waterFactor(),
        well.gas().map(GasRate::standardCubicMetresPerSecond).orElse(0.0) * designCase.oilFactor(),
        24 / hours,
        well.surge().map(Fraction::ratio).orElse(Defaults.SURGE.ratio()),
        designCase.running() == DesignCase.Running.ALL_ON,
        well.returnedWater().map(LiquidRate::cubicMetresPerSecond).orElse(0.0));
  }

  /** Into shared lines and the separator in this case. */
  double oil() {
    return oilDay * (allOn ? running : 1);
  }

  /** The water it makes and what is brought back to it. */
  double water() {
    return made() + returned;
  }

  private double made() {
    return waterDay * (allOn ? running : 1);
  }

  /** All of it, what the oil holds included; none where there is no liquid to carry it. */
  double gas() {
    return fluid() > 0 ? gasDay * (allOn ? running : 1) : 0;
  }

  double fluid() {
    return oil() + water();
  }

  /** Whether anything comes down its line. */
  boolean makesSomething() {
    return whileRunning() > 0;
  }

  /** What it makes while it runs, whatever the case says. */
  double pumped() {
    return (oilDay + waterDay) * running;
  }

  /** All that comes down its line while it runs: water brought back too, which never rests. */
  double whileRunning() {
    return pumped() + returned;
  }

  /** All that comes down its line, on the day's average. */
  double dayAverage() {
    return oilDay + waterDay + returned;
  }

  /** Share of the day it runs. */
  double shareOfDay() {
    return Math.min(1, 1 / running);
  }

  /** Temperature of what leaves it, K, if somebody typed it. */
  OptionalDouble headK() {
    return well.headTemperature().isPresent()
        ? OptionalDouble.of(well.headTemperature().get().kelvins())
        : OptionalDouble.empty();
  }

  /** At the top of the stroke. */
  double peak() {
    return pumped() * surge + returned;
  }

  /** What a line all to itself carries at the top of the stroke, over {@link #fluid()}. */
  double ownLineTimes() {
    return returned > 0 ? peak() / fluid() : surge * (allOn ? 1 : running);
  }

  String ownLineWords() {
    return "one well: its rate while it runs, x "
        + surge
        + " for the stroke"
        + (returned > 0 ? ", and the water brought back" : "");
  }
}
