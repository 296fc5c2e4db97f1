package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickInputException;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.tanks.RoundTank;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;

/** Barrels in a foot of a tank, between two heights, and how long they last. */
final class BarrelsPerFootSum implements QuickSum {
  @Override
  public String id() {
    return "barrels-per-foot";
  }

  @Override
  public String title() {
    return "Barrels per foot of a round tank";
  }

  @Override
  public String about() {
    return "0.1399 D^2. With two heights: the volume between them; with a rate too: how long that"
        + " lasts. Wall thickness is left out (about half a per cent).";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        amount("diameter", "diameter of the tank", Unit.FOOT, "12 ft"),
        amount("from", "lower height, such as the sales outlet", Unit.FOOT, "1 ft")
            .orZero()
            .optional(),
        amount("to", "upper height, such as the high switch", Unit.FOOT, "14 ft").optional(),
        amount("rate", "rate it fills or empties at", Unit.BARREL_PER_DAY, "28 bbl/d").optional());
  }

  @Override
  public QuickResult compute(QuickValues in) {
    RoundTank tank = new RoundTank(in.length("diameter"));
    QuickResult foot =
        QuickResult.of(
            new QuickAnswer("per-foot", "One foot holds", tank.barrelsPerFoot(), Unit.BARREL));
    if (in.has("from") != in.has("to")) {
      throw new QuickInputException("--from and --to go together: type both or neither.");
    }
    if (!in.has("from")) {
      return foot;
    }
    if (in.length("to").metres() <= in.length("from").metres()) {
      throw new QuickInputException(
          "--to: " + in.words("to") + " must lie above --from " + in.words("from") + ".");
    }
    Computed<Volume> room = tank.between(in.length("from"), in.length("to"));
    List<QuickAnswer> more = new ArrayList<>();
    more.add(new QuickAnswer("volume", "Between the two heights", room, Unit.BARREL));
    if (in.has("rate")) {
      more.add(
          new QuickAnswer("lasts", "Lasts", RoundTank.lasts(room, in.rate("rate")), Unit.HOUR));
    }
    return foot.and(more);
  }
}
