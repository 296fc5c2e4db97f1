package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.words;

import java.util.List;
import tankyard.engine.pipes.MinorLosses;
import tankyard.engine.pipes.PipePath;
import tankyard.engine.pipes.PipeRun;
import tankyard.engine.pipes.RunLoss;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** What fittings cost, as pressure and as so much more pipe. */
final class FittingsSum implements QuickSum {
  /** No real pipe: only the fittings count. */
  private static final double SHORT_M = 1e-6;

  @Override
  public String id() {
    return "fittings";
  }

  @Override
  public String title() {
    return "Pressure lost in fittings";
  }

  @Override
  public String about() {
    return "Crane's length-over-bore values times the full-turbulence factor, and fixed K. Known: "
        + String.join(", ", FittingList.names())
        + ". Too small for thick oil in laminar flow.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        words("fittings", "counts and fittings", "3 elbow-90, 2 tee-branch, gate-valve"),
        PipeInputs.rate(),
        PipeInputs.bore(),
        LiquidInputs.gravity(),
        LiquidInputs.temperature(),
        LiquidInputs.viscosity(),
        PipeInputs.roughness());
  }

  @Override
  public QuickResult compute(QuickValues in) {
    LiquidInputs.Flowing flowing = LiquidInputs.read(in);
    double bore = in.length("bore").metres();
    MinorLosses minor = MinorLosses.of(FittingList.read("fittings", in.words("fittings")), bore);
    PipeRun run =
        new PipeRun(bore, in.length("roughness").metres(), PipePath.straight(SHORT_M, 0), minor);
    RunLoss loss = new RunLoss(run, flowing.liquid(), in.rate("rate").cubicMetresPerSecond());
    return QuickResult.of(
            new QuickAnswer("loss", "Pressure lost in the fittings", loss.friction(), Unit.PSI),
            new QuickAnswer(
                "length", "As much as so much pipe", asPipe(minor.k(), bore, loss), Unit.FOOT),
            new QuickAnswer("velocity", "Velocity", loss.velocity(), Unit.FOOT_PER_SECOND),
            new QuickAnswer("reynolds", "Reynolds number", loss.reynolds(), Unit.ONE))
        .and(flowing.answers())
        .saying(flowing.cautions());
  }

  private static Computed<Length> asPipe(double k, double boreM, RunLoss loss) {
    double factor = loss.state().frictionFactor();
    return Computed.of(
        Length.ofFeet(Unit.FOOT.fromSi(k * boreM / factor)),
        () ->
            Working.of(
                    "Length of pipe that loses as much",
                    "L",
                    "K*d/(12*f)",
                    Unit.FOOT,
                    Source.published("Crane TP-410: K = f L/D"),
                    Term.number("K", "velocity heads lost in the fittings", k),
                    Term.of("d", "bore", Unit.INCH.fromSi(boreM), Unit.INCH),
                    Term.number("f", "friction factor of the pipe", factor))
                .from(List.of(loss.frictionFactor().working())));
  }
}
