package tankyard.engine.pipes;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** Friction of one run written out in field units. */
final class RunWorking {
  static final Source DARCY = Source.published("Darcy-Weisbach, friction factor of Darcy");
  private static final Source COLEBROOK = Source.published("Colebrook 1939");
  private static final Source POISEUILLE = Source.published("Hagen-Poiseuille: f = 64/Re");
  private static final Source BETWEEN =
      Source.commonPractice("smooth cubic between laminar at Re 2000 and turbulent at Re 4000");
  private static final Source UNITS = Source.definition("units");

  private final PipeRun run;
  private final Liquid liquid;
  private final double flow;
  private final FlowState state;

  RunWorking(PipeRun run, Liquid liquid, double flowM3PerS) {
    this.run = run;
    this.liquid = liquid;
    flow = flowM3PerS;
    state = new PipeFlow(run, liquid).state(flowM3PerS);
  }

  /** Over a share of the run, zero to one. */
  Working friction(double share) {
    double length = share * (run.path().lengthM() + run.minor().extraLengthM());
    double viscous = state.reynolds() > 0 ? run.minor().viscousK() / state.reynolds() : 0;
    Working factor = factor();
    Working velocity = velocity();
    return Working.of(
            "Friction",
            "dp",
            "0.0067306*SG*v^2*(12*f*L/d+K)",
            Unit.PSI,
            DARCY,
            Term.number("SG", "gravity of the liquid", liquid.specificGravity()),
            Term.of(
                "v",
                "velocity",
                Unit.FOOT_PER_SECOND.fromSi(velocityMPerS()),
                Unit.FOOT_PER_SECOND),
            Term.number("f", "friction factor, " + state.regime().words(), state.frictionFactor()),
            Term.of("L", "length with what fittings add", LineWorking.feet(length), Unit.FOOT),
            bore(),
            Term.number(
                "K", "velocity heads lost in fittings", share * (run.minor().k() + viscous)))
        .from(flow > 0 ? List.of(velocity, factor) : List.of(velocity));
  }

  private Working velocity() {
    return Working.of(
        "Velocity in the full pipe",
        "v",
        "0.0119145*Q/d^2",
        Unit.FOOT_PER_SECOND,
        UNITS,
        rate(),
        bore());
  }

  private Working factor() {
    Working re =
        Working.of("Reynolds number", "Re", "92.15*SG*Q/(d*mu)", Unit.ONE, UNITS, reynoldsTerms());
    return switch (state.regime()) {
      case STILL, LAMINAR ->
          Working.of("Friction factor", "f", "64/Re", Unit.ONE, POISEUILLE, reynolds())
              .from(List.of(re));
      case TURBULENT -> colebrook(reynolds(), state.frictionFactor()).from(List.of(re));
      case TRANSITION -> between().from(List.of(re));
    };
  }

  private Working colebrook(Term reynolds, double root) {
    return Working.of(
        "Friction factor (the root of Colebrook's equation put back into it)",
        "f",
        "(2*log10(e1/(3.7*d)+2.51/(Re*sqrt(f1))))^(-2)",
        Unit.ONE,
        COLEBROOK,
        Term.of("e1", "roughness of the wall", Unit.INCH.fromSi(run.roughnessM()), Unit.INCH),
        bore(),
        reynolds,
        Term.number("f1", "the root", root));
  }

  private Working between() {
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
        reynolds());
  }

  private Term[] reynoldsTerms() {
    List<Term> terms = new ArrayList<>();
    terms.add(Term.number("SG", "gravity of the liquid", liquid.specificGravity()));
    terms.add(rate());
    terms.add(bore());
    terms.add(
        Term.of("mu", "viscosity", Unit.CENTIPOISE.fromSi(liquid.viscosityPaS()), Unit.CENTIPOISE));
    return terms.toArray(Term[]::new);
  }

  private Term reynolds() {
    return Term.number("Re", "Reynolds number", state.reynolds());
  }

  private Term rate() {
    return Term.of("Q", "rate", Unit.BARREL_PER_DAY.fromSi(flow), Unit.BARREL_PER_DAY);
  }

  private Term bore() {
    return Term.of("d", "bore", Unit.INCH.fromSi(run.boreM()), Unit.INCH);
  }

  private double velocityMPerS() {
    return Math.abs(state.velocityMPerS());
  }
}
