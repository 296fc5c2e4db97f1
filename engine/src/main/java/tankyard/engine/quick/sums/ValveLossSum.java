package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.List;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Unit;
import tankyard.engine.valves.ValveLoss;

/** What a dump valve takes at its working travel. */
final class ValveLossSum implements QuickSum {
  @Override
  public String id() {
    return "valve-loss";
  }

  @Override
  public String title() {
    return "Pressure lost in a dump valve";
  }

  @Override
  public String about() {
    return "SG (Q/Cv)^2 at the travel the float holds it at, not wide open. Straight-line trim.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        amount("cv", "flow coefficient wide open", Unit.CV, "12 Cv"),
        PipeInputs.rate(),
        amount("gravity", "gravity of the liquid", Unit.SPECIFIC_GRAVITY, "1.06 SG"),
        amount("travel", "share of full travel it works at", Unit.PERCENT, "50 %")
            .usual("50 %", "common practice, no source"));
  }

  @Override
  public QuickResult compute(QuickValues in) {
    Cv working = ValveLoss.atTravel(in.quantity("cv", Cv::new), in.fraction("travel"));
    return QuickResult.of(
        new QuickAnswer(
            "loss",
            "Pressure lost in the valve",
            ValveLoss.at(working, in.rate("rate"), in.gravity("gravity")),
            Unit.PSI));
  }
}
