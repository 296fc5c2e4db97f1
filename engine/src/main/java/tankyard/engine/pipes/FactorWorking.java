package tankyard.engine.pipes;

import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** The friction factor written out. */
public final class FactorWorking {
  private static final Source COLEBROOK = Source.published("Colebrook 1939");
  private static final Source POISEUILLE = Source.published("Hagen-Poiseuille: f = 64/Re");
  private static final Source BETWEEN =
      Source.commonPractice("smooth cubic between laminar at Re 2000 and turbulent at Re 4000");
  private static final Source STILL = Source.definition("nothing moves");

  private FactorWorking() {}

  public static Working of(PipeRun run, FlowState state) {
    return switch (state.regime()) {
      case STILL -> Working.of("Friction factor", "f", "0", Unit.ONE, STILL);
      case LAMINAR ->
          Working.of("Friction factor", "f", "64/Re", Unit.ONE, POISEUILLE, reynolds(state));
      case TURBULENT -> colebrook(run, state);
      case TRANSITION -> between(run, state);
    };
  }

  private static Working colebrook(PipeRun run, FlowState state) {
    return Working.of(
        "Friction factor (the root of Colebrook's equation put back into it)",
        "f",
        "(2*log10(e1/(3.7*d)+2.51/(Re*sqrt(f1))))^(-2)",
        Unit.ONE,
        COLEBROOK,
        Term.of("e1", "roughness of the wall", Unit.INCH.fromSi(run.roughnessM()), Unit.INCH),
        Term.of("d", "bore", Unit.INCH.fromSi(run.boreM()), Unit.INCH),
        reynolds(state),
        Term.number("f1", "the root", state.frictionFactor()));
  }

  private static Working between(PipeRun run, FlowState state) {
    FrictionFactor end = FrictionFactor.at(FrictionFactor.TURBULENT_FROM, run.relativeRoughness());
    double t = Math.log(state.reynolds() / FrictionFactor.LAMINAR_UP_TO) / Math.log(2);
    return Working.of(
        "Friction factor between laminar and turbulent",
        "f",
        "10^((2*t^3-3*t^2+1)*log10(64*2000)+(t^3-2*t^2+t)*log10(2)"
            + "+(3*t^2-2*t^3)*log10(f4*4000^2)+(t^3-t^2)*n4*log10(2))/Re^2",
        Unit.ONE,
        BETWEEN,
        Term.number("t", "how far along, log10(Re/2000)/log10(2)", t),
        Term.number("f4", "factor at Re 4000", end.factor()),
        Term.number("n4", "slope there", end.exponent()),
        reynolds(state));
  }

  private static Term reynolds(FlowState state) {
    return Term.number("Re", "Reynolds number", state.reynolds());
  }
}
