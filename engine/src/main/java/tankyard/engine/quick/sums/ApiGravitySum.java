package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.List;
import tankyard.engine.fluids.LiquidState;
import tankyard.engine.pipes.RunLoss;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** Gravity one way and the other, and what a foot of the liquid weighs. */
final class ApiGravitySum implements QuickSum {
  private static final Source SOURCE = Source.definition("SG = 141.5/(API + 131.5)");

  @Override
  public String id() {
    return "api-gravity";
  }

  @Override
  public String title() {
    return "Degrees API, specific gravity and psi per foot";
  }

  @Override
  public String about() {
    return "The definition, then the gravity and viscosity at a temperature: oil below 1 SG, brine"
        + " from 1 on.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        amount("gravity", "gravity at 60 °F", Unit.DEGREE_API, "36 API"),
        LiquidInputs.temperature());
  }

  @Override
  public QuickResult compute(QuickValues in) {
    Gravity gravity = in.gravity("gravity");
    LiquidState state = LiquidInputs.state(gravity, in.temperature("temperature"));
    return QuickResult.of(
            new QuickAnswer("api", "Degrees API", api(gravity), Unit.DEGREE_API),
            new QuickAnswer(
                "sg", "Specific gravity at 60 °F", specific(gravity), Unit.SPECIFIC_GRAVITY),
            new QuickAnswer(
                "per-foot",
                "A foot of it weighs",
                RunLoss.lift(state.liquid(), Unit.FOOT.toSi(1), "one foot"),
                Unit.PSI),
            new QuickAnswer(
                "here", "Gravity at the temperature", state.gravity(), Unit.SPECIFIC_GRAVITY),
            new QuickAnswer(
                "viscosity", "Viscosity at the temperature", state.viscosity(), Unit.CENTIPOISE))
        .saying(state.cautions());
  }

  private static Computed<Gravity> api(Gravity gravity) {
    return Computed.of(
        gravity,
        () ->
            Working.of(
                "Degrees API",
                "API",
                "141.5/SG-131.5",
                Unit.DEGREE_API,
                SOURCE,
                Term.of("SG", "gravity at 60 °F", gravity, Unit.SPECIFIC_GRAVITY)));
  }

  private static Computed<Gravity> specific(Gravity gravity) {
    return Computed.of(
        gravity,
        () ->
            Working.of(
                "Specific gravity",
                "SG",
                "141.5/(API+131.5)",
                Unit.SPECIFIC_GRAVITY,
                SOURCE,
                Term.of("API", "degrees API", gravity, Unit.DEGREE_API)));
  }
}
