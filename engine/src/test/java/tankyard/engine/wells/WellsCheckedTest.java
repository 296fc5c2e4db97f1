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
  }
}
