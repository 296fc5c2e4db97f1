package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.List;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.vessels.LyingVessel;

/** What a lying vessel holds, part full and full. */
final class VesselVolumeSum implements QuickSum {
  @Override
  public String id() {
    return "vessel-volume";
  }

  @Override
  public String title() {
    return "Liquid in a lying vessel";
  }

  @Override
  public String about() {
    return "Part-full cylinder and both heads, level. Dished heads have a crown of one diameter and"
        + " a knuckle of six per cent of it.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        VesselInputs.diameter(),
        VesselInputs.length(),
        amount("depth", "depth of liquid above the bottom", Unit.INCH, "15 in").orZero(),
        VesselInputs.heads(),
        VesselInputs.coneDepth());
  }

  @Override
  public QuickResult compute(QuickValues in) {
    LyingVessel vessel = VesselInputs.read(in);
    Length depth = VesselInputs.height(in, "depth", vessel);
    Length top = Length.of(vessel.heightM(), Unit.METRE);
    return QuickResult.of(
        new QuickAnswer("volume", "Holds to that depth", vessel.below(depth), Unit.BARREL),
        new QuickAnswer("full", "Holds full", vessel.below(top), Unit.BARREL));
  }
}
