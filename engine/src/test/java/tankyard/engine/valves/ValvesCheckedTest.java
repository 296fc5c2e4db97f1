package tankyard.engine.valves;

import tankyard.engine.units.Cv;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Unit;
import tankyard.engine.verification.Answers;
import tankyard.engine.verification.CheckedRows;

/** Valves against a handbook problem and hand sums. */
class ValvesCheckedTest implements CheckedRows {
  @Override
  public String topic() {
    return "valves";
  }

  @Override
  public void compute(Answers answers) {
    double k = ValveLoss.toK(Cv.of(500, Unit.KV), 0.154);
    answers.put("CV-01", "k", k);
    answers.put("CV-01", "l-over-d", k / 0.015);
    answers.put("CV-01", "length", k / 0.015 * 0.154);

    Cv half = ValveLoss.atTravel(Cv.ofGpmPerRootPsi(12), ValveLoss.USUAL_TRAVEL);
    answers.put(
        "CV-02",
        "loss",
        ValveLoss.at(half, LiquidRate.ofBarrelsPerDay(216), sg(1.06)).value().toPsi());

    answers.put("FLOAT-01", "open", pull(1).opening().value().toPounds());
    answers.put("FLOAT-01", "1 in", pull(1).most().value().toPsi());
    answers.put("FLOAT-01", "2 in", pull(2).most().value().toPsi());
  }

  private static FloatPull pull(double portInches) {
    FloatSpec spec =
        new FloatSpec(
            Length.of(10, Unit.INCH),
            sg((0.845 + 1.06) / 2),
            Fraction.of(6, Unit.ONE),
            FloatSpec.USUAL_FRICTION,
            Length.of(portInches, Unit.INCH));
    return new FloatPull(spec, sg(1.06), sg(0.845));
  }

  private static Gravity sg(double value) {
    return Gravity.of(value, Unit.SPECIFIC_GRAVITY);
  }
}
