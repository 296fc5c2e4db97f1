package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.List;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickInputException;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Unit;
import tankyard.engine.vessels.GunBarrelLeg;
import tankyard.engine.working.Caution;

/** The water leg of a gun barrel, either way round. */
final class GunBarrelSum implements QuickSum {
  @Override
  public String id() {
    return "gun-barrel";
  }

  @Override
  public String title() {
    return "Water leg of a gun barrel";
  }

  @Override
  public String about() {
    return "Columns in balance under the same air. Type the interface you want to get the weir, or"
        + " the weir you have to get the interface. Heights are above the vessel's bottom.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        amount("oil-outlet", "height of the oil outlet", Unit.FOOT, "18 ft"),
        amount("interface", "height of the interface wanted", Unit.FOOT, "10 ft").optional(),
        amount("weir", "height of the leg's weir as cut", Unit.FOOT, "16.4 ft").optional(),
        amount("oil", "gravity of the oil", Unit.SPECIFIC_GRAVITY, "32 API"),
        amount("brine", "gravity of the water", Unit.SPECIFIC_GRAVITY, "1.08 SG"),
        amount("loss", "head lost in the leg at its surge", Unit.FOOT, "3 in")
            .orZero()
            .usual("0 ft", "at rest"));
  }

  @Override
  public QuickResult compute(QuickValues in) {
    if (in.has("interface") == in.has("weir")) {
      throw new QuickInputException(
          "--interface or --weir: type the one you know and leave out the other.");
    }
    GunBarrelLeg barrel =
        new GunBarrelLeg(
            in.length("oil-outlet"), in.gravity("oil"), in.gravity("brine"), in.length("loss"));
    QuickAnswer answer =
        in.has("interface")
            ? new QuickAnswer(
                "weir", "Cut the weir at", barrel.weirFor(in.length("interface")), Unit.FOOT)
            : new QuickAnswer(
                "interface",
                "The interface stands at",
                barrel.interfaceFor(in.length("weir")),
                Unit.FOOT);
    return QuickResult.of(answer)
        .saying(
            List.of(
                new Caution(
                    "gun-barrel-touchy",
                    "An inch of weir moves the interface by "
                        + Figures.significant(barrel.touchiness(), 2)
                        + " in: make the leg adjustable.")));
  }
}
