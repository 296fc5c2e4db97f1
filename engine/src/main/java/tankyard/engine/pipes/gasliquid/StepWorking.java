package tankyard.engine.pipes.gasliquid;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.fluids.GasState;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.pipes.FactorWorking;
import tankyard.engine.pipes.FlowState;
import tankyard.engine.pipes.MinorLosses;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** One step of a gas-liquid march written out in field units, so that it can be done by hand. */
final class StepWorking {
  private static final Source UNITS = Source.definition("units");
  private static final Source BLEND = Source.definition("blended by the parts of the flow");
  private static final Source GAS_LAW = Source.definition("gas law, base 14.696 psia and 60 °F");

  private final StepState state;
  private final Gradient here;
  private final GasState gas;

  StepWorking(StepState state) {
    this.state = state;
    here = state.step().gradient();
    gas = state.fluids().gas().state(state.step().mean(), state.fluids().temperature());
  }

  /** What the step costs. */
  Working step() {
    Working lift = lift();
    Working friction = friction();
    Working speeding = acceleration();
    return Working.of(
            "The step that costs most, " + here.pattern().words(),
            "dp",
            "(gz+gf)*L/(1-min(Ek," + Gradient.MOST_ACCELERATION + "))",
            Unit.PSI,
            HoldUpWorking.BEGGS_BRILL,
            Term.number("gz", "lift, psi/ft", lift.value()),
            Term.number("gf", "friction, psi/ft", friction.value()),
            Term.of("L", "length", Unit.FOOT.fromSi(state.step().lengthM()), Unit.FOOT),
            Term.number("Ek", "part that speeds the gas up", speeding.value()))
        .from(List.of(lift, friction, speeding));
  }

  private Working lift() {
    Working mixture =
        Working.of(
                "Density in the pipe",
                "rho",
                "H*rl+(1-H)*rg",
                Unit.POUND_PER_CUBIC_FOOT,
                HoldUpWorking.BEGGS_BRILL,
                Term.number("H", "hold-up", here.holdUp()),
                liquidDensity(),
                gasDensity())
            .from(List.of(new HoldUpWorking(state).of(), gas.densityWorking()));
    return Working.of(
            "Lift, psi/ft",
            "gz",
            "rho*s/144",
            Unit.ONE,
            UNITS,
            density("rho", "in the pipe", here.mixtureKgPerM3()),
            Term.number("s", "sine of the slope", Math.sin(state.step().slope())))
        .from(List.of(mixture));
  }

  private Working friction() {
    FlowState flow = state.flowState();
    MinorLosses minor = state.run().minor();
    double length = state.run().path().lengthM();
    double k = minor.k() + minor.viscousK() / flow.reynolds();
    double slip =
        here.liquidPart() == 0 ? 1 : Math.exp(BeggsBrill.slip(here.liquidPart(), here.holdUp()));
    return Working.of(
            "Friction, psi/ft",
            "gf",
            "(12*f*x*m/d+K)*rn*v^2/9266.126",
            Unit.ONE,
            HoldUpWorking.BEGGS_BRILL,
            Term.number("f", "friction factor, " + flow.regime().words(), flow.frictionFactor()),
            Term.number("x", "slip factor, exp S", slip),
            Term.number(
                "m",
                "length with what fittings add, over length",
                1 + minor.extraLengthM() / length),
            bore(),
            Term.number(
                "K", "velocity heads lost in fittings, per ft", k / Unit.FOOT.fromSi(length)),
            density("rn", "of the mixture without slip", state.mixedKgPerM3()),
            velocity())
        .from(
            List.of(
                reynolds(flow), FactorWorking.of(state.run(), flow), slip(), blended(), speed()));
  }

  private Working reynolds(FlowState flow) {
    Working viscosity =
        Working.of(
                "Viscosity of the mixture",
                "mu",
                "Lw*ml+(1-Lw)*mg",
                Unit.CENTIPOISE,
                BLEND,
                part(),
                viscosity("ml", "of the liquid", liquid().viscosityPaS()),
                viscosity("mg", "of the gas", gas.gas().viscosityPaS()))
            .from(List.of(gas.viscosity().working()));
    return Working.of(
            "Reynolds number of the mixture",
            "Re",
            "124.0137*rn*v*d/mu",
            Unit.ONE,
            UNITS,
            density("rn", "of the mixture without slip", state.mixedKgPerM3()),
            velocity(),
            bore(),
            viscosity("mu", "of the mixture", state.mixedPaS()))
        .from(List.of(viscosity));
  }

  private Working slip() {
    double y = here.holdUp() == 0 ? 1 : here.liquidPart() / (here.holdUp() * here.holdUp());
    String log = "(2.302585093*log10(y))";
    String formula =
        here.holdUp() == 0 || y == 1
            ? "1"
            : y > 1 && y < 1.2
                ? "2.2*y-1.2"
                : "2.718281828^(1/(-0.0523/"
                    + log
                    + "+3.182-0.8725*"
                    + log
                    + "+0.01853*"
                    + log
                    + "^3))";
    Term ratio = Term.number("y", "Lw/H^2, not below 0.01", Math.max(BeggsBrill.LEAST_Y, y));
    return formula.contains("y")
        ? Working.of("Slip factor", "x", formula, Unit.ONE, HoldUpWorking.BEGGS_BRILL, ratio)
        : Working.of("Slip factor", "x", formula, Unit.ONE, HoldUpWorking.BEGGS_BRILL);
  }

  private Working blended() {
    return Working.of(
        "Density of the mixture without slip",
        "rn",
        "Lw*rl+(1-Lw)*rg",
        Unit.POUND_PER_CUBIC_FOOT,
        BLEND,
        part(),
        liquidDensity(),
        gasDensity());
  }

  private Working speed() {
    return Working.of(
            "Velocity of both together",
            "v",
            "0.01191452*(Q+Qg)/d^2",
            Unit.FOOT_PER_SECOND,
            UNITS,
            rate("Q", "liquid", state.flow().liquidM3PerS()),
            rate("Qg", "gas at this pressure", state.gasM3PerS()),
            bore())
        .from(List.of(gasRate()));
  }

  private Working gasRate() {
    double free = state.flow().freeGas(state.step().mean());
    List<Working> from = new ArrayList<>();
    state
        .flow()
        .solution()
        .ifPresent(
            s -> from.add(s.freeWorking(state.flow().standardGasM3PerS(), state.step().mean())));
    from.add(gas.z().working());
    return Working.of(
            "Gas at this pressure",
            "Qg",
            "178.1076*G*z*14.696/P*(T+459.67)/519.67",
            Unit.BARREL_PER_DAY,
            GAS_LAW,
            Term.of("G", "free gas", Unit.MCF_PER_DAY.fromSi(free), Unit.MCF_PER_DAY),
            Term.number("z", "compressibility factor", gas.z().value().ratio()),
            Term.of("P", "mean absolute pressure", state.step().mean().toPsia(), Unit.PSI),
            Term.of("T", "temperature", state.fluids().temperature(), Unit.FAHRENHEIT))
        .from(from);
  }

  private Working acceleration() {
    double gasSpeed = (1 - here.liquidPart()) * here.mixtureMPerS();
    return Working.of(
        "Part that speeds the gas up",
        "Ek",
        "rho*v*vg/(4633.063*P)",
        Unit.ONE,
        HoldUpWorking.BEGGS_BRILL,
        density("rho", "in the pipe", here.mixtureKgPerM3()),
        velocity(),
        Term.of(
            "vg",
            "gas alone over the bore",
            Unit.FOOT_PER_SECOND.fromSi(gasSpeed),
            Unit.FOOT_PER_SECOND),
        Term.of("P", "mean absolute pressure", state.step().mean().toPsia(), Unit.PSI));
  }

  private Liquid liquid() {
    return state.fluids().liquid();
  }

  private Term part() {
    return Term.number("Lw", "liquid's part of the flow", here.liquidPart());
  }

  private Term bore() {
    return Term.of("d", "bore", Unit.INCH.fromSi(state.run().boreM()), Unit.INCH);
  }

  private Term velocity() {
    return Term.of(
        "v",
        "velocity of both together",
        Unit.FOOT_PER_SECOND.fromSi(here.mixtureMPerS()),
        Unit.FOOT_PER_SECOND);
  }

  private Term liquidDensity() {
    return density("rl", "of the liquid", liquid().densityKgPerM3());
  }

  private Term gasDensity() {
    return density("rg", "of the gas", gas.gas().densityKgPerM3());
  }

  private static Term density(String symbol, String words, double kgPerM3) {
    double pounds = Unit.POUND_PER_CUBIC_FOOT.fromSi(kgPerM3);
    return Term.of(symbol, "density " + words, pounds, Unit.POUND_PER_CUBIC_FOOT);
  }

  private static Term viscosity(String symbol, String words, double pascalSeconds) {
    return Term.of(
        symbol, "viscosity " + words, Unit.CENTIPOISE.fromSi(pascalSeconds), Unit.CENTIPOISE);
  }

  private static Term rate(String symbol, String words, double m3PerS) {
    return Term.of(symbol, words, Unit.BARREL_PER_DAY.fromSi(m3PerS), Unit.BARREL_PER_DAY);
  }
}
