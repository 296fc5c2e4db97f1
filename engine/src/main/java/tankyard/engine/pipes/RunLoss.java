package tankyard.engine.pipes;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Speed;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** What one run full of liquid costs, with workings in field units: psi, ft, in, bbl/d, cP. */
public final class RunLoss {
  static final Source DARCY = Source.published("Darcy-Weisbach, friction factor of Darcy");
  private static final Source HYDROSTATICS =
      Source.definition("hydrostatics, fresh water 0.4331 psi/ft at 60 °F");
  private static final Source UNITS = Source.definition("units");

  private final PipeRun run;
  private final Liquid liquid;
  private final double flow;
  private final FlowState state;

  /** At a flow whose direction does not matter. */
  public RunLoss(PipeRun run, Liquid liquid, double flowM3PerS) {
    this.run = run;
    this.liquid = liquid;
    flow = Math.abs(flowM3PerS);
    state = new PipeFlow(run, liquid).state(flow);
  }

  public FlowState state() {
    return state;
  }

  /** Friction of the whole run and its fittings. */
  public Computed<Pressure> friction() {
    double pascals = new PipeFlow(run, liquid).drop(flow).pascals();
    return Computed.of(Pressure.psiFromPascals(pascals), () -> frictionWorking(1))
        .with(PipeCautions.of(run, state));
  }

  /** What a rise costs; a fall gives it back. */
  public static Computed<Pressure> lift(Liquid liquid, double riseM, String riseWords) {
    return Computed.of(
        Pressure.psiFromPascals(liquid.staticPascals(riseM)),
        () ->
            Working.of(
                "Lift",
                "dp",
                "0.433101*SG*z",
                Unit.PSI,
                HYDROSTATICS,
                Term.number("SG", "gravity of the liquid", liquid.specificGravity()),
                Term.of("z", riseWords, Unit.FOOT.fromSi(riseM), Unit.FOOT)));
  }

  public Computed<Speed> velocity() {
    double feet = Unit.FOOT_PER_SECOND.fromSi(state.velocityMPerS());
    return Computed.of(
        Speed.ofFeetPerSecond(feet),
        () ->
            Working.of(
                "Velocity in the full pipe",
                "v",
                "0.01191452*Q/d^2",
                Unit.FOOT_PER_SECOND,
                UNITS,
                rate(),
                bore()));
  }

  public Computed<Fraction> reynolds() {
    return Computed.of(
        Fraction.of(state.reynolds(), Unit.ONE),
        () ->
            Working.of(
                "Reynolds number",
                "Re",
                "92.15046*SG*Q/(d*mu)",
                Unit.ONE,
                UNITS,
                gravity(),
                rate(),
                bore(),
                Term.of(
                    "mu",
                    "viscosity",
                    Unit.CENTIPOISE.fromSi(liquid.viscosityPaS()),
                    Unit.CENTIPOISE)));
  }

  /** Darcy's factor; zero where nothing moves. */
  public Computed<Fraction> frictionFactor() {
    return Computed.of(
        Fraction.of(state.frictionFactor(), Unit.ONE),
        () -> FactorWorking.of(run, state).from(List.of(reynolds().working())));
  }

  /** Friction over a share of the run, zero to one. */
  Working frictionWorking(double share) {
    double length = share * (run.path().lengthM() + run.minor().extraLengthM());
    double viscous = state.reynolds() > 0 ? run.minor().viscousK() / state.reynolds() : 0;
    double k = share * (run.minor().k() + viscous);
    List<Working> from = new ArrayList<>(List.of(velocity().working()));
    if (flow > 0) {
      from.add(frictionFactor().working());
    }
    return Working.of(
            "Friction",
            "dp",
            "0.006730594*SG*v^2*(12*f*L/d+K)",
            Unit.PSI,
            DARCY,
            gravity(),
            Term.of("v", "velocity", velocity().value(), Unit.FOOT_PER_SECOND),
            Term.number("f", "friction factor, " + state.regime().words(), state.frictionFactor()),
            Term.of("L", "length with what fittings add", Unit.FOOT.fromSi(length), Unit.FOOT),
            bore(),
            Term.number("K", "velocity heads lost in fittings", k))
        .from(from);
  }

  private Term gravity() {
    return Term.number("SG", "gravity of the liquid", liquid.specificGravity());
  }

  private Term rate() {
    return Term.of("Q", "rate", Unit.BARREL_PER_DAY.fromSi(flow), Unit.BARREL_PER_DAY);
  }

  private Term bore() {
    return Term.of("d", "bore", Unit.INCH.fromSi(run.boreM()), Unit.INCH);
  }
}
