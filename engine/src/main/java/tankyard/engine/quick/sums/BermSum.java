package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.List;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.tanks.Berm;
import tankyard.engine.tanks.BermSpec;
import tankyard.engine.units.Area;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;

/** How tall a berm must stand. */
final class BermSum implements QuickSum {
  @Override
  public String id() {
    return "berm";
  }

  @Override
  public String title() {
    return "Height of a berm";
  }

  @Override
  public String about() {
    return "Largest tank and rain over the ground the other tanks leave free, upright walls,"
        + " freeboard on top.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        amount("length", "inside length", Unit.FOOT, "60 ft"),
        amount("width", "inside width", Unit.FOOT, "44 ft"),
        amount("tank", "whole shell of the largest tank", Unit.BARREL, "400 bbl"),
        amount("others", "ground under all the other tanks", Unit.SQUARE_FOOT, "226 ft2")
            .orZero()
            .usual("0 ft2", "no other tank"),
        amount("rain", "rain inside", Unit.INCH, "5 in").orZero().usual("0 in", "no rain"),
        amount("factor", "factor on the largest tank", Unit.ONE, "1")
            .usual("1", "federal rule; some states want 1.5"),
        amount("freeboard", "added on top", Unit.INCH, "6 in").orZero().usual("0 in", "none"));
  }

  @Override
  public QuickResult compute(QuickValues in) {
    Area inside = Area.ofSquareFeet(in.length("length").toFeet() * in.length("width").toFeet());
    BermSpec spec =
        new BermSpec(
            inside,
            in.volume("tank"),
            in.fraction("factor"),
            in.area("others"),
            in.length("rain"),
            in.length("freeboard"));
    return QuickResult.of(
            new QuickAnswer("height", "Berm stands at least", Berm.height(spec), Unit.FOOT))
        .saying(
            List.of(
                new Caution(
                    "berm-local-rules",
                    "The state and the spill plan's engineer say which storm counts and whether"
                        + " water tanks do; earth walls slope and settle.")));
  }
}
