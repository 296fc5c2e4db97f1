package tankyard.engine.pipes.gasliquid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.pipes.PipeCautions;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Speed;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * The workings of a marched gas-liquid line: sums over its steps, with the step that costs most
 * written out whole.
 *
 * @param fluids one for each run of the line
 */
public record GasLiquidWorking(
    GasLiquidLine line, GasLiquidFlow flow, List<GasLiquidFluids> fluids, GasLiquidMarch march) {
  public GasLiquidWorking {
    fluids = List.copyOf(fluids);
  }

  private static final Source MARCH =
      Source.definition("sum of the march's steps, each at the pressure of its middle");
  private static final Source EROSION =
      Source.published(
          "API RP 14E, C 100 for steady flow without solids (as quoted; its basis is disputed)");
  private static final double EROSION_C = 100;

  public Computed<Pressure> lift() {
    GasLiquidStretch part = march.stretch();
    return Computed.of(
        Pressure.psiFromPascals(part.liftPascals()),
        () ->
            Working.of(
                "Lift with gas in the line, " + steps(),
                "dp",
                "u-w",
                Unit.PSI,
                MARCH,
                psi("u", "lost on the way up", part.risePascals()),
                psi("w", "given back on the way down", part.fallPascals())));
  }

  /** Friction and what speeds the gas up. */
  public Computed<Pressure> loss() {
    GasLiquidStretch part = march.stretch();
    return Computed.of(
            Pressure.psiFromPascals(part.lossPascals()),
            () ->
                Working.of(
                        "Line loss with gas, " + steps(),
                        "dp",
                        "f+a",
                        Unit.PSI,
                        MARCH,
                        psi("f", "friction, all steps", part.frictionPascals()),
                        psi("a", "speeding the gas up, all steps", part.accelerationPascals()))
                    .from(List.of(new StepWorking(hardest()).step())))
        .with(cautions());
  }

  /** Of the march, and of walls too rough for its friction. */
  public List<Caution> cautions() {
    List<Caution> said = new ArrayList<>(march.cautions());
    line.line().runs().stream()
        .flatMap(run -> PipeCautions.ofWall(run).stream())
        .forEach(said::add);
    return said;
  }

  /** The velocity above which the wall may wear, at the end where the gas is largest. */
  public Optional<Computed<Speed>> erosional() {
    Gradient end = march.points().get(march.points().size() - 1).gradient();
    if (end.liquidPart() == 1) {
      return Optional.empty();
    }
    Phases phases =
        fluids.get(fluids.size() - 1).at(march.points().get(march.points().size() - 1).pressure());
    double density =
        Unit.POUND_PER_CUBIC_FOOT.fromSi(
            end.liquidPart() * phases.liquid().densityKgPerM3()
                + (1 - end.liquidPart()) * phases.gas().densityKgPerM3());
    return Optional.of(
        Computed.of(
            Speed.ofFeetPerSecond(EROSION_C / Math.sqrt(density)),
            () ->
                Working.of(
                    "Velocity above which the wall may wear",
                    "v",
                    "C/sqrt(rn)",
                    Unit.FOOT_PER_SECOND,
                    EROSION,
                    Term.number("C", "assumed", EROSION_C),
                    Term.of(
                        "rn",
                        "density of the mixture at the end",
                        density,
                        Unit.POUND_PER_CUBIC_FOOT))));
  }

  /** Of the mixture without slip, where the line loses most. */
  public double reynolds() {
    return hardest().flowState().reynolds();
  }

  private StepState hardest() {
    GasLiquidStep step = march.hardest();
    return new StepState(
        line.line().runs().get(step.run()), line.payne(), flow, fluids.get(step.run()), step);
  }

  private String steps() {
    return march.stretch().steps() + " steps";
  }

  private static Term psi(String symbol, String name, double pascals) {
    return Term.of(symbol, name, Unit.PSI.fromSi(pascals), Unit.PSI);
  }
}
