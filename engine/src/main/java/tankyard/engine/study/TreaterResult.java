package tankyard.engine.study;

import java.util.Optional;
import tankyard.engine.lease.Practice;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Power;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.vessels.HeatDuty;
import tankyard.engine.working.Computed;

/**
 * What a heater-treater would burn in a case, if the oil were heated before it is sold. It comes as
 * cold as the ground: lines and tanks give off what the wells brought.
 *
 * @param from temperature it comes in at
 * @param duty of the burner, with most of the water knocked out before
 * @param gas it burns
 * @param propane it burns in a month of 30 days in place of gas
 * @param propaneABarrel for each barrel sold; nothing where none is made
 * @param dutyWithWater with all the water going through
 * @param wellsGas what the wells send of it, where any is typed
 */
public record TreaterResult(
    Temperature from,
    Computed<Power> duty,
    Computed<GasRate> gas,
    Computed<Volume> propane,
    Optional<Computed<Volume>> propaneABarrel,
    Computed<Power> dutyWithWater,
    Optional<GasRate> wellsGas) {
  private static final double MONTH_DAYS = 30;

  /** Empty where nobody thinks of a treater. */
  static Optional<TreaterResult> of(CaseStudy study) {
    return study.lease().practice().treatAt().map(to -> of(study, to));
  }

  private static TreaterResult of(CaseStudy study, Temperature to) {
    Practice practice = study.lease().practice();
    Fraction efficiency = practice.treaterEfficiency().orElse(Defaults.TREATER_EFFICIENCY);
    double left = practice.treaterWater().orElse(Defaults.TREATER_WATER).ratio();
    LiquidRate oil = study.allOil();
    LiquidRate water = study.allWater();
    LiquidRate little = LiquidRate.ofBarrelsPerDay(left * water.toBarrelsPerDay());
    Computed<Power> duty = HeatDuty.of(oil, little, study.ground(), to, efficiency);
    boolean sells = oil.toBarrelsPerDay() > 0;
    return new TreaterResult(
        study.ground(),
        duty,
        HeatDuty.gas(duty.value()),
        HeatDuty.propane(duty.value(), MONTH_DAYS),
        sells
            ? Optional.of(HeatDuty.propane(duty.value(), 1 / oil.toBarrelsPerDay()))
            : Optional.empty(),
        HeatDuty.of(oil, water, study.ground(), to, efficiency),
        wellsGas(study));
  }

  private static Optional<GasRate> wellsGas(CaseStudy study) {
    double all = study.wells().stream().mapToDouble(WellFlow::gas).sum();
    return all > 0
        ? Optional.of(GasRate.ofMcfPerDay(Unit.MCF_PER_DAY.fromSi(all)))
        : Optional.empty();
  }
}
