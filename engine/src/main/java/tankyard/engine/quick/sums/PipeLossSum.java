package tankyard.engine.quick.sums;

import static tankyard.engine.quick.QuickInput.amount;

import java.util.List;
import tankyard.engine.pipes.MinorLosses;
import tankyard.engine.pipes.PipePath;
import tankyard.engine.pipes.PipeRun;
import tankyard.engine.pipes.RunLoss;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickInputException;
import tankyard.engine.quick.QuickResult;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** Friction and lift of one line. */
final class PipeLossSum implements QuickSum {
  @Override
  public String id() {
    return "pipe-loss";
  }

  @Override
  public String title() {
    return "Pressure lost in a pipe";
  }

  @Override
  public String about() {
    return "Darcy-Weisbach with Colebrook's factor, and the rise from one end to the other. One"
        + " liquid, pipe full; a hill between the ends is not seen.";
  }

  @Override
  public List<QuickInput> inputs() {
    return List.of(
        PipeInputs.rate(),
        PipeInputs.length(),
        PipeInputs.bore(),
        amount("rise", "rise from start to end; a fall is below zero", Unit.ELEVATION_FOOT, "12 ft")
            .anySign()
            .usual("0 ft", "level"),
        LiquidInputs.gravity(),
        LiquidInputs.temperature(),
        LiquidInputs.viscosity(),
        PipeInputs.roughness(),
        amount("k", "velocity heads lost in fittings", Unit.ONE, "8")
            .orZero()
            .usual("0", "no fittings"));
  }

  @Override
  public QuickResult compute(QuickValues in) {
    LiquidInputs.Flowing flowing = LiquidInputs.read(in);
    double rise = in.elevation("rise").metres();
    double length = in.length("length").metres();
    if (Math.abs(rise) > length) {
      throw new QuickInputException(
          "--rise: a pipe of "
              + in.words("length")
              + " can't rise or fall by "
              + in.words("rise")
              + ".");
    }
    RunLoss loss = new RunLoss(run(in), flowing.liquid(), rate(in));
    Computed<Pressure> friction = loss.friction();
    Computed<Pressure> lift =
        RunLoss.lift(flowing.liquid(), rise, "rise from one end to the other");
    return QuickResult.of(
            new QuickAnswer(
                "total", "Pressure to push it through", total(friction, lift), Unit.PSI),
            new QuickAnswer("friction", "Friction", friction, Unit.PSI),
            new QuickAnswer("lift", "Lift", lift, Unit.PSI),
            new QuickAnswer("velocity", "Velocity", loss.velocity(), Unit.FOOT_PER_SECOND),
            new QuickAnswer("reynolds", "Reynolds number", loss.reynolds(), Unit.ONE),
            new QuickAnswer("factor", "Friction factor", loss.frictionFactor(), Unit.ONE))
        .and(flowing.answers())
        .saying(flowing.cautions())
        .saying(falls(friction, lift));
  }

  private static double rate(QuickValues in) {
    return in.rate("rate").cubicMetresPerSecond();
  }

  private static PipeRun run(QuickValues in) {
    return new PipeRun(
        in.length("bore").metres(),
        in.length("roughness").metres(),
        PipePath.straight(in.length("length").metres(), 0),
        MinorLosses.ofK(in.number("k")));
  }

  private static Computed<Pressure> total(Computed<Pressure> friction, Computed<Pressure> lift) {
    double psi = friction.value().toPsi() + lift.value().toPsi();
    return Computed.of(
        Pressure.ofPsi(psi),
        () ->
            Working.of(
                    "Pressure to push it through",
                    "dp",
                    "dpf+dpz",
                    Unit.PSI,
                    Source.definition("friction and lift added"),
                    Term.of("dpf", "friction", friction.value(), Unit.PSI),
                    Term.of("dpz", "lift", lift.value(), Unit.PSI))
                .from(List.of(friction.working(), lift.working())));
  }

  private static List<Caution> falls(Computed<Pressure> friction, Computed<Pressure> lift) {
    if (friction.value().pascals() + lift.value().pascals() >= 0) {
      return List.of();
    }
    return List.of(
        new Caution(
            "line-falls",
            "The fall gives more than friction takes: the line runs part full and asks for"
                + " nothing, but it does not pull either."));
  }
}
