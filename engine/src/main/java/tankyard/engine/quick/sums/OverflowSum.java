package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.List;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.tanks.Overflow;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;

/** What an overflow passes by gravity. */
final class OverflowSum implements QuickSum {
  @Override
  public String id() {
    return "overflow";
  }

  @Override
  public String title() {
    return "What an overflow passes";
  }

  @Override
  public String about() {
    return "The lesser of what it swallows with air coming back (Froude 0.31) and what it carries"
        + " on its slope (Manning). Water-thin liquid; cold thick oil passes less.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        amount("bore", "inside diameter", Unit.INCH, "3.068 in"),
        amount("slope", "fall over length", Unit.PERCENT, "2 %").usual("2 %", "1/4 in per foot"),
        amount("filling", "how full it may run on the slope", Unit.PERCENT, "75 %")
            .usual("75 %", "common practice, no source"),
        amount("n", "Manning's n", Unit.ONE, "0.013")
            .usual("0.013", "steel; smooth plastic 0.009; from memory"),
        amount("all-fluid", "all the fluid that may come", Unit.BARREL_PER_DAY, "378 bbl/d")
            .optional());
  }

  @Override
  public QuickResult compute(QuickValues in) {
    Overflow overflow = new Overflow(in.length("bore"));
    Fraction slope = in.fraction("slope");
    Fraction filling = in.fraction("filling");
    double n = in.number("n");
    Computed<LiquidRate> capacity = overflow.capacity(slope, filling, n);
    return QuickResult.of(
            new QuickAnswer("capacity", "Passes", capacity, Unit.BARREL_PER_DAY),
            new QuickAnswer(
                "self-venting",
                "Swallows with air coming back",
                overflow.selfVenting(),
                Unit.BARREL_PER_DAY),
            new QuickAnswer(
                "on-slope",
                "Carries on its slope",
                overflow.onSlope(slope, filling, n),
                Unit.BARREL_PER_DAY))
        .saying(spills(in, capacity.value()));
  }

  private static List<Caution> spills(QuickValues in, LiquidRate capacity) {
    if (!in.has("all-fluid")
        || in.rate("all-fluid").cubicMetresPerSecond() <= capacity.cubicMetresPerSecond()) {
      return List.of();
    }
    double over = in.rate("all-fluid").cubicMetresPerSecond() - capacity.cubicMetresPerSecond();
    return List.of(
        new Caution(
            "overflow-too-small",
            in.words("all-fluid")
                + " may come and "
                + UnitSystem.FIELD.print(capacity, 3)
                + " passes: "
                + UnitSystem.FIELD.print(over, Unit.BARREL_PER_DAY.dimension(), 3)
                + " goes over. Take the next size."));
  }
}
