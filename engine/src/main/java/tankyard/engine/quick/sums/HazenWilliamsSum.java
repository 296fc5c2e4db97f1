package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.fluids.Water;
import tankyard.engine.pipes.HazenWilliams;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
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

  /** A little room for how a gravity of 1 was rounded. */
  private static final double LIGHTEST = 0.995;

  /** Water that holds all the salt it can. */
  private static final double HEAVIEST = 1.2;

  private static final double TURBULENT = 4000;

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
        .saying(cautions(gravity, reynolds(rate, bore)));
  }

  /** Of fresh water at 60 degF: the law knows no viscosity, its range does. */
  private static double reynolds(LiquidRate rate, Length bore) {
    Liquid water = Water.at(Temperature.ofFahrenheit(60));
    return 4
        * rate.cubicMetresPerSecond()
        * water.densityKgPerM3()
        / (Math.PI * bore.metres() * water.viscosityPaS());
  }

  private static List<Caution> cautions(double gravity, double reynolds) {
    List<Caution> said = new ArrayList<>();
    if (gravity < LIGHTEST || gravity > HEAVIEST) {
      said.add(
          new Caution(
              "hazen-williams-not-water",
              Figures.significant(gravity, 4)
                  + " SG is neither water nor brine (1.0 to 1.2); Hazen-Williams is for water: use"
                  + " pipe-loss."));
    }
    if (reynolds < TURBULENT) {
      said.add(
          new Caution(
              "hazen-williams-not-turbulent",
              "Water at 60 °F would flow here at Reynolds number "
                  + Figures.significant(reynolds, 3)
                  + ", below the 4000 from which flow is turbulent; Hazen-Williams is for turbulent"
                  + " flow: use pipe-loss."));
    }
    return said;
  }
}
