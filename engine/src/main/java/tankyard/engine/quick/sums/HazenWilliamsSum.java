package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.List;
import tankyard.engine.pipes.HazenWilliams;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** The field man's water formula. */
final class HazenWilliamsSum implements QuickSum {
  private static final Source SOURCE =
      Source.published("Hazen-Williams, field form from a fire-protection note");

  @Override
  public String id() {
    return "hazen-williams";
  }

  @Override
  public String title() {
    return "Water in a pipe by Hazen-Williams";
  }

  @Override
  public String about() {
    return "4.52 Q^1.85 L/(C^1.85 d^4.87), times the gravity. For water near room temperature only:"
        + " it knows no viscosity. C: 140 polyethylene, 150 fibreglass, 120 new steel.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        PipeInputs.rate(),
        PipeInputs.length(),
        PipeInputs.bore(),
        amount("c", "Hazen-Williams C", Unit.ONE, "140").usual("140", "polyethylene; from memory"),
        amount("gravity", "gravity of the water", Unit.SPECIFIC_GRAVITY, "1.0 SG")
            .usual("1.0 SG", "fresh water"));
  }

  @Override
  public QuickResult compute(QuickValues in) {
    LiquidRate rate = in.rate("rate");
    Length length = in.length("length");
    Length bore = in.length("bore");
    double c = in.number("c");
    double gravity = in.gravity("gravity").specific();
    double psi =
        gravity * HazenWilliams.fieldPsi(rate.toGpm(), length.toFeet(), bore.toInches(), c);
    Computed<Pressure> loss =
        Computed.of(
            Pressure.ofPsi(psi),
            () ->
                Working.of(
                    "Friction by Hazen-Williams",
                    "dp",
                    "4.52*Q^1.85*L*SG/(C^1.85*d^4.87)",
                    Unit.PSI,
                    SOURCE,
                    Term.of("Q", "rate", rate, Unit.GALLON_PER_MINUTE),
                    Term.of("L", "length", length, Unit.FOOT),
                    Term.number("SG", "gravity of the water", gravity),
                    Term.number("C", "Hazen-Williams C", c),
                    Term.of("d", "bore", bore, Unit.INCH)));
    return QuickResult.of(new QuickAnswer("loss", "Friction", loss, Unit.PSI))
        .saying(cautions(gravity));
  }

  private static List<Caution> cautions(double gravity) {
    if (gravity >= 0.95) {
      return List.of();
    }
    return List.of(
        new Caution(
            "hazen-williams-not-water",
            "A liquid this light is no water; Hazen-Williams is for water: use pipe-loss."));
  }
}
