package tankyard.engine.wells;

import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.units.WellResistance;
import tankyard.engine.verification.Answers;
import tankyard.engine.verification.CheckedRows;

/** Wells against hand sums. */
class WellsCheckedTest implements CheckedRows {
  @Override
  public String topic() {
    return "wells";
  }

  @Override
  public void compute(Answers answers) {
    Gravity brine = Gravity.of(1.06, Unit.SPECIFIC_GRAVITY);
    answers.put("INJ-01", "psi", ScreeningLimit.of(Length.ofFeet(1150), brine).value().toPsi());
    InjectionLaw well =
        new InjectionLaw(Pressure.ofPsi(120), WellResistance.ofPsiPerBarrelPerDay(0.25));
    for (int rate : new int[] {600, 780, 1000}) {
      Pressure wellhead = well.wellhead(LiquidRate.ofBarrelsPerDay(rate)).value();
      answers.put("INJ-02", String.valueOf(rate), wellhead.toPsi());
    }
    answers.put("INJ-02", "limit", well.rateAt(Pressure.ofPsi(315)).toBarrelsPerDay());
    answers.put(
        "RUN-01",
        "gpm",
        RunningRate.of(LiquidRate.ofBarrelsPerDay(30), Time.ofHours(24), 3).value().toGpm());
    answers.put("TURN-01", "5-3", notAbove(5, 0.40, 3));
    answers.put("TURN-01", "5-2", notAbove(5, 0.25, 2));
    answers.put("TURN-02", "10-1", notAbove(10, 0.4, 1));
    answers.put("TURN-02", "10-3", notAbove(10, 0.4, 3));
  }

  /** Chance that of so many wells alike no more than some run. */
  private static double notAbove(int wells, double share, int running) {
    RunningTogether sum = RunningTogether.NONE;
    for (int i = 0; i < wells; i++) {
      sum = sum.and(30, share);
    }
    return 1 - sum.chanceAbove(30 * running);
  }
}
