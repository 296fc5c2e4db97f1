package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.List;
import tankyard.engine.fluids.BrineSpec;
import tankyard.engine.fluids.EmulsionSpec;
import tankyard.engine.fluids.FluidModel;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.fluids.LiquidState;
import tankyard.engine.fluids.OilSpec;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;
import tankyard.engine.working.Caution;

/**
 * The inputs of any sum in which a liquid flows. A gravity below 1 is taken as oil, from 1 on as
 * brine; a typed viscosity wins over what either law says.
 */
final class LiquidInputs {
  private LiquidInputs() {}

  static QuickInput gravity() {
    return amount("gravity", "gravity at 60 °F", Unit.SPECIFIC_GRAVITY, "36 API")
        .usual("1.0 SG", "fresh water");
  }

  static QuickInput temperature() {
    return amount("temperature", "temperature of the liquid", Unit.FAHRENHEIT, "60 °F")
        .usual("60 °F", "where gravities are measured");
  }

  static QuickInput viscosity() {
    return amount("viscosity", "its viscosity, where it is known", Unit.CENTIPOISE, "8 cP")
        .optional();
  }

  static List<QuickInput> all() {
    return List.of(gravity(), temperature(), viscosity());
  }

  static LiquidState state(Gravity gravity, Temperature temperature) {
    boolean oil = gravity.specific() < 1;
    Gravity light = oil ? gravity : Gravity.ofApi(35);
    Gravity heavy = oil ? Gravity.of(1, Unit.SPECIFIC_GRAVITY) : gravity;
    FluidModel model =
        new FluidModel(OilSpec.ofGravity(light), new BrineSpec(heavy), EmulsionSpec.USUAL);
    return oil ? model.oil(temperature) : model.brine(temperature);
  }

  static Flowing read(QuickValues in) {
    LiquidState state = state(in.gravity("gravity"), in.temperature("temperature"));
    QuickAnswer gravity =
        new QuickAnswer(
            "gravity", "Gravity of the liquid here", state.gravity(), Unit.SPECIFIC_GRAVITY);
    if (in.has("viscosity")) {
      double typed = in.quantity("viscosity", Viscosity::new).pascalSeconds();
      Liquid liquid = new Liquid(state.liquid().densityKgPerM3(), typed);
      return new Flowing(liquid, List.of(gravity), state.gravity().cautions());
    }
    QuickAnswer viscosity =
        new QuickAnswer(
            "viscosity", "Viscosity of the liquid here", state.viscosity(), Unit.CENTIPOISE);
    return new Flowing(state.liquid(), List.of(gravity, viscosity), state.cautions());
  }

  /** A liquid as the laws take it, and what must be said of it. */
  record Flowing(Liquid liquid, List<QuickAnswer> answers, List<Caution> cautions) {}
}
