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
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.units.WellResistance;
import tankyard.engine.wells.InjectionLaw;
import tankyard.engine.wells.ScreeningLimit;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;

/** Screening limit of an injection well, and what it asks for at a rate. */
final class InjectionLimitSum implements QuickSum {
  @Override
  public String id() {
    return "injection-limit";
  }

  @Override
  public String title() {
    return "Pressure limit of an injection well";
  }

  @Override
  public String about() {
    return "The federal screening form (0.733 - 0.433 SG) depth. With a well's two numbers and a"
        + " rate: what it asks for while the pump runs. The permit governs.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        amount("depth", "depth to the zone", Unit.FOOT, "1150 ft"),
        amount("gravity", "gravity of the water", Unit.SPECIFIC_GRAVITY, "1.06 SG"),
        amount("at-no-flow", "wellhead pressure with nothing going in", Unit.PSI, "120 psi")
            .orZero()
            .optional(),
        amount("resistance", "rise for each bbl/d", Unit.PSI_PER_BARREL_PER_DAY, "0.25 psi/(bbl/d)")
            .orZero()
            .optional(),
        amount("rate", "rate while the pump runs", Unit.BARREL_PER_DAY, "600 bbl/d").optional());
  }

  @Override
  public QuickResult compute(QuickValues in) {
    Computed<Pressure> limit = ScreeningLimit.of(in.length("depth"), in.gravity("gravity"));
    QuickResult result =
        QuickResult.of(
            new QuickAnswer("limit", "Screening limit at the wellhead", limit, Unit.PSI));
    List<String> given =
        List.of("at-no-flow", "resistance", "rate").stream().filter(in::has).toList();
    if (given.isEmpty()) {
      return result;
    }
    if (given.size() < 3) {
      throw new QuickInputException(
          "--at-no-flow, --resistance and --rate go together: type all three or none.");
    }
    InjectionLaw well =
        new InjectionLaw(in.pressure("at-no-flow"), in.quantity("resistance", WellResistance::new));
    Computed<Pressure> wellhead = well.wellhead(in.rate("rate"));
    return result
        .and(List.of(new QuickAnswer("wellhead", "Asks for at that rate", wellhead, Unit.PSI)))
        .saying(over(limit.value(), wellhead.value()));
  }

  private static List<Caution> over(Pressure limit, Pressure wellhead) {
    List<Caution> said = new ArrayList<>();
    if (wellhead.pascals() > limit.pascals()) {
      said.add(
          new Caution(
              "injection-over-limit",
              "At that rate the wellhead stands at "
                  + UnitSystem.FIELD.print(wellhead, 3)
                  + ", over the limit of "
                  + UnitSystem.FIELD.print(limit, 3)
                  + ": pump slower for longer."));
    }
    return said;
  }
}
