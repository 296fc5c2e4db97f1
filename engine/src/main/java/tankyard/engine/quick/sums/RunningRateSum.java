package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.List;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.wells.RunningRate;

/** What a well's line sees while the well pumps. */
final class RunningRateSum implements QuickSum {
  @Override
  public String id() {
    return "running-rate";
  }

  @Override
  public String title() {
    return "Rate of a well while it pumps";
  }

  @Override
  public String about() {
    return "A day's liquid in the hours it runs, times the surge of the strokes.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        amount("daily", "liquid a day", Unit.BARREL_PER_DAY, "30 bbl/d"),
        amount("hours", "hours a day it runs", Unit.HOUR, "12 h").usual("24 h", "runs all day"),
        amount("surge", "peak of a stroke over the average", Unit.ONE, "3")
            .usual("3", "one well on its line; from memory"));
  }

  @Override
  public QuickResult compute(QuickValues in) {
    return QuickResult.of(
        new QuickAnswer(
            "rate",
            "The line sees",
            RunningRate.of(in.rate("daily"), in.quantity("hours", Time::new), in.number("surge")),
            Unit.BARREL_PER_DAY));
  }
}
