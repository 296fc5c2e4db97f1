package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.List;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Unit;
import tankyard.engine.valves.FloatPull;
import tankyard.engine.valves.FloatSpec;

/** The most pressure a float can work against. */
final class FloatPullSum implements QuickSum {
  @Override
  public String id() {
    return "float-pull";
  }

  @Override
  public String title() {
    return "What a float can pull";
  }

  @Override
  public String about() {
    return "Buoyancy of the ball times the lever, less friction, against port area times pressure"
        + " across the seat: not the gauge, but gauge and head down to the valve, less what stands"
        + " behind it.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        amount("ball", "diameter of the ball", Unit.INCH, "10 in"),
        amount("lever", "pull at the seat over pull at the ball", Unit.ONE, "6"),
        amount("port", "bore of the seat", Unit.INCH, "1 in"),
        amount("oil", "gravity of the oil", Unit.SPECIFIC_GRAVITY, "36 API"),
        amount("brine", "gravity of the water", Unit.SPECIFIC_GRAVITY, "1.06 SG"),
        amount("weight", "the whole ball against water", Unit.SPECIFIC_GRAVITY, "0.95 SG")
            .optional(),
        amount("friction", "share of the pull that friction takes", Unit.PERCENT, "30 %")
            .orZero()
            .usual("30 %", "from memory"));
  }

  @Override
  public QuickResult compute(QuickValues in) {
    Gravity oil = in.gravity("oil");
    Gravity brine = in.gravity("brine");
    Gravity midway = Gravity.of((oil.specific() + brine.specific()) / 2, Unit.SPECIFIC_GRAVITY);
    FloatSpec spec =
        new FloatSpec(
            in.length("ball"),
            in.has("weight") ? in.gravity("weight") : midway,
            in.fraction("lever"),
            in.fraction("friction"),
            in.length("port"));
    FloatPull pull = new FloatPull(spec, brine, oil);
    return QuickResult.of(
        new QuickAnswer("most", "Works against, across the seat", pull.most(), Unit.PSI),
        new QuickAnswer("opening", "Pull to open", pull.opening(), Unit.POUND_FORCE),
        new QuickAnswer("closing", "Pull to close", pull.closing(), Unit.POUND_FORCE));
  }
}
