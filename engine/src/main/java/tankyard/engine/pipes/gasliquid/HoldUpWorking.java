package tankyard.engine.pipes.gasliquid;

import java.util.List;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** The hold-up of one step written out. */
record HoldUpWorking(StepState state) {
  static final Source BEGGS_BRILL =
      Source.published(
          "Beggs and Brill 1973, revised pattern limits, constants as given in an open library");
  private static final Source PAYNE =
      Source.memory(
          "Payne and others 1979: 0.924 uphill, 0.685 downhill, not below the flow's part");
  private static final Source ALONE = Source.definition("one of the two flows alone");

  Working of() {
    Gradient here = state.step().gradient();
    return switch (here.pattern()) {
      case LIQUID -> Working.of("Hold-up, no gas beside the liquid", "H", "1", Unit.ONE, ALONE);
      case GAS -> Working.of("Hold-up, no liquid", "H", "0", Unit.ONE, ALONE);
      case TRANSITION -> between(here);
      default -> kept("Hold-up, " + here.pattern().words(), here.pattern());
    };
  }

  private Working between(Gradient here) {
    Working segregated = kept("Hold-up if segregated", FlowPattern.SEGREGATED);
    Working intermittent = kept("Hold-up if intermittent", FlowPattern.INTERMITTENT);
    double share = PatternMap.at(here.liquidPart()).segregatedShare(state.froude());
    return Working.of(
            "Hold-up, " + here.pattern().words(),
            "H",
            "A*Hs+(1-A)*Hi",
            Unit.ONE,
            BEGGS_BRILL,
            Term.number("A", "share of the segregated, (L3-Fr)/(L3-L2)", share),
            Term.number("Hs", "hold-up if segregated", segregated.value()),
            Term.number("Hi", "hold-up if intermittent", intermittent.value()))
        .from(List.of(segregated, intermittent));
  }

  private Working kept(String title, FlowPattern pattern) {
    Working level = level(pattern);
    Working inclination = inclination(pattern);
    double slope = state.step().slope();
    double payne = state.payne() ? BeggsBrill.payneFactor(slope) : 1;
    String least = state.payne() ? "Lw" : "min(Lw,0.01)";
    return Working.of(
            title,
            "H",
            "min(1,max(" + least + ",k*H0*(1+C*(S-S^3/3))))",
            Unit.ONE,
            PAYNE,
            part(),
            Term.number("k", "Payne's factor", payne),
            Term.number("H0", "hold-up if it lay level", level.value()),
            Term.number("C", "inclination factor", inclination.value()),
            Term.number("S", "sine of 1.8 times the slope", Math.sin(1.8 * slope)))
        .from(List.of(level, inclination));
  }

  private Working level(FlowPattern pattern) {
    double[] k = HoldUp.levelConstants(pattern);
    return Working.of(
        "Hold-up if it lay level",
        "H0",
        "min(1,max(Lw," + k[0] + "*Lw^" + k[1] + "/Fr^" + k[2] + "))",
        Unit.ONE,
        BEGGS_BRILL,
        part(),
        froude());
  }

  private Working inclination(FlowPattern pattern) {
    double slope = state.step().slope();
    if (!HoldUp.inclined(pattern, slope)) {
      return Working.of("Inclination factor", "C", "0", Unit.ONE, BEGGS_BRILL);
    }
    double[] k = HoldUp.slopeConstants(pattern, slope);
    String inside = k[0] + "*Lw^(" + k[1] + ")*N^(" + k[2] + ")*Fr^(" + k[3] + ")";
    return Working.of(
        "Inclination factor",
        "C",
        "max(0,(1-Lw)*2.302585093*log10(" + inside + "))",
        Unit.ONE,
        BEGGS_BRILL,
        part(),
        froude(),
        Term.number("N", "liquid velocity number", state.velocityNumber()));
  }

  private Term part() {
    return Term.number("Lw", "liquid's part of the flow", state.step().gradient().liquidPart());
  }

  private Term froude() {
    return Term.number("Fr", "Froude number, v^2/(g d)", state.froude());
  }
}
