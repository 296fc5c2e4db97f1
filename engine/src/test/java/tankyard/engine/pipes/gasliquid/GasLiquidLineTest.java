package tankyard.engine.pipes.gasliquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.fluids.Atmosphere;
import tankyard.engine.fluids.Gas;
import tankyard.engine.fluids.GasModel;
import tankyard.engine.fluids.GasSpec;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.pipes.FrictionFactor;
import tankyard.engine.pipes.LineLaw;
import tankyard.engine.pipes.MarchResult;
import tankyard.engine.pipes.MinorLosses;
import tankyard.engine.pipes.PipePath;
import tankyard.engine.pipes.PipeRun;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Temperature;
import tankyard.engine.working.Caution;

class GasLiquidLineTest {
  private static final AbsolutePressure AIR = Atmosphere.at(0);
  private static final AbsolutePressure SEPARATOR = AbsolutePressure.ofPsia(44.7);
  private static final double BORE = 0.0493;
  private static final Temperature COOL = Temperature.ofFahrenheit(60);
  private static final GasModel GAS = new GasModel(GasSpec.ofGravity(0.75));
  private static final Liquid OIL = new Liquid(880, 0.03);
  private static final GasLiquidFluids FLUIDS =
      new GasLiquidFluids(OIL, GAS, COOL, GasLiquidFluids.USUAL_TENSION);
  private static final double[] ALONG = {0, 100, 250, 400, 600};
  private static final double[] HILLY = {0, 12, 3, 15, 10};

  @Test
  void without_gas_it_is_the_single_liquid_answer() {
    LineLaw line = line(PipePath.of(ALONG, HILLY));
    double flow = LiquidRate.ofBarrelsPerDay(300).cubicMetresPerSecond();
    GasLiquidMarch gasLiquid =
        GasLiquidLine.of(line).march(new GasLiquidFlow(flow, 0), FLUIDS, SEPARATOR, AIR);
    MarchResult single = line.march(flow, OIL, SEPARATOR.gaugePascals(AIR));
    assertThat(single.control()).isEmpty();
    assertThat(gasLiquid.upstream().gaugePascals(AIR))
        .isCloseTo(single.upstreamPascals(), withinPercentage(1e-6));
    assertThat(gasLiquid.liquidM3()).isCloseTo(line.volumeM3(), withinPercentage(1e-9));
    assertThat(gasLiquid.accelerationPascals()).isCloseTo(0, within(1e-6));
  }

  /** P1^2 - P2^2 = 2 P rho (f L/D + 2 ln(P1/P2)) G^2/rho^2 for z and f held at the mean. */
  @Test
  void without_liquid_it_is_the_long_gas_line_of_the_textbooks() {
    PipeRun run = run(PipePath.straight(2000, 0), MinorLosses.NONE);
    double standard = GasRate.ofMcfPerDay(120).standardCubicMetresPerSecond();
    GasLiquidMarch march =
        GasLiquidLine.of(LineLaw.of(run))
            .march(new GasLiquidFlow(0, standard), FLUIDS, SEPARATOR, AIR);
    double p1 = march.upstream().pascals();
    double p2 = SEPARATOR.pascals();
    Gas mean = GAS.at(new AbsolutePressure((p1 + p2) / 2), COOL);
    double massPerArea = standard * GAS.standardDensityKgPerM3() / run.areaM2();
    double reynolds = massPerArea * BORE / mean.viscosityPaS();
    double factor = FrictionFactor.at(reynolds, run.relativeRoughness()).factor();
    double pressureOverDensity = (p1 + p2) / 2 / mean.densityKgPerM3();
    double squares =
        massPerArea
            * massPerArea
            * pressureOverDensity
            * (factor * 2000 / BORE + 2 * Math.log(p1 / p2));
    assertThat(p1 / p2).isGreaterThan(1.1);
    assertThat(p1 * p1 - p2 * p2).isCloseTo(squares, withinPercentage(0.5));
    assertThat(march.liquidM3()).isZero();
  }

  @Test
  void the_parts_add_up() {
    GasLiquidMarch march = hilly(100, 20);
    assertThat(
            SEPARATOR.pascals()
                + march.liftPascals()
                + march.frictionPascals()
                + march.accelerationPascals()
                + march.heldPascals())
        .isCloseTo(march.upstream().pascals(), within(1e-6));
    assertThat(march.accelerationPascals()).isPositive();
    assertThat(march.points()).hasSize(5);
    assertThat(march.points().get(0).pressure()).isEqualTo(march.upstream());
    assertThat(march.points().get(4).pressure()).isEqualTo(SEPARATOR);
    assertThat(march.points()).extracting(GasLiquidPoint::distanceM).containsExactly(box(ALONG));
  }

  @Test
  void stations_in_between_change_nothing() {
    GasLiquidFlow flow = flow(100, 20);
    GasLiquidMarch one =
        GasLiquidLine.of(line(PipePath.straight(600, 20))).march(flow, FLUIDS, SEPARATOR, AIR);
    PipePath pegs = PipePath.of(new double[] {0, 90, 300, 600}, new double[] {0, 3, 10, 20});
    GasLiquidMarch many = GasLiquidLine.of(line(pegs)).march(flow, FLUIDS, SEPARATOR, AIR);
    assertThat(many.upstream().pascals())
        .isCloseTo(one.upstream().pascals(), withinPercentage(1e-4));
  }

  @Test
  void two_runs_are_one_after_the_other() {
    PipeRun first = run(PipePath.straight(300, 10), MinorLosses.NONE);
    PipeRun second = run(PipePath.straight(300, -4), MinorLosses.NONE);
    GasLiquidFlow flow = flow(100, 20);
    AbsolutePressure between =
        GasLiquidLine.of(LineLaw.of(second)).march(flow, FLUIDS, SEPARATOR, AIR).upstream();
    AbsolutePressure start =
        GasLiquidLine.of(LineLaw.of(first)).march(flow, FLUIDS, between, AIR).upstream();
    AbsolutePressure both =
        GasLiquidLine.of(LineLaw.of(List.of(first, second)))
            .march(flow, FLUIDS, SEPARATOR, AIR)
            .upstream();
    assertThat(both.pascals()).isCloseTo(start.pascals(), within(1e-6));
  }

  @Test
  void fittings_cost_something() {
    PipePath path = PipePath.straight(600, 0);
    GasLiquidFlow flow = flow(100, 20);
    double bare =
        GasLiquidLine.of(line(path)).march(flow, FLUIDS, SEPARATOR, AIR).frictionPascals();
    LineLaw fitted = LineLaw.of(run(path, MinorLosses.ofExtraLength(60).plus(MinorLosses.ofK(10))));
    double more = GasLiquidLine.of(fitted).march(flow, FLUIDS, SEPARATOR, AIR).frictionPascals();
    assertThat(more).isGreaterThan(1.1 * bare);
  }

  @Test
  void gas_lightens_a_climb_and_a_fall_gives_less_back() {
    assertThat(hilly(100, 20).liftPascals()).isPositive();
    LineLaw up = line(PipePath.straight(600, 30));
    double full = OIL.staticPascals(30);
    double lift = GasLiquidLine.of(up).march(flow(100, 60), FLUIDS, SEPARATOR, AIR).liftPascals();
    assertThat(lift).isLessThan(full);
    LineLaw down = line(PipePath.straight(600, -30));
    double back =
        -GasLiquidLine.of(down).march(flow(100, 60), FLUIDS, SEPARATOR, AIR).liftPascals();
    assertThat(back).isLessThan(lift).isPositive();
  }

  @Test
  void a_fall_never_draws_a_vacuum() {
    LineLaw down = line(PipePath.straight(600, -60));
    GasLiquidMarch march =
        GasLiquidLine.of(down).march(flow(20, 0.001), FLUIDS, AbsolutePressure.ofPsia(20), AIR);
    assertThat(march.upstream()).isEqualTo(AIR);
    assertThat(march.heldPascals()).isPositive();
    assertThat(march.cautions()).extracting(Caution::id).contains("gas-liquid-no-vacuum");
  }

  @Test
  void payne_asks_for_less_uphill() {
    LineLaw up = line(PipePath.straight(600, 30));
    GasLiquidFlow flow = flow(100, 20);
    double original = GasLiquidLine.of(up).march(flow, FLUIDS, SEPARATOR, AIR).upstream().pascals();
    double payne =
        new GasLiquidLine(up, true).march(flow, FLUIDS, SEPARATOR, AIR).upstream().pascals();
    assertThat(payne).isLessThan(original);
  }

  private static GasLiquidMarch hilly(double barrels, double mcf) {
    return GasLiquidLine.of(line(PipePath.of(ALONG, HILLY)))
        .march(flow(barrels, mcf), FLUIDS, SEPARATOR, AIR);
  }

  private static GasLiquidFlow flow(double barrels, double mcf) {
    return new GasLiquidFlow(
        LiquidRate.ofBarrelsPerDay(barrels).cubicMetresPerSecond(),
        GasRate.ofMcfPerDay(mcf).standardCubicMetresPerSecond());
  }

  private static LineLaw line(PipePath path) {
    return LineLaw.of(run(path, MinorLosses.NONE));
  }

  private static PipeRun run(PipePath path, MinorLosses minor) {
    return new PipeRun(BORE, 1.5e-6, path, minor);
  }

  private static Double[] box(double[] values) {
    return java.util.Arrays.stream(values).boxed().toArray(Double[]::new);
  }
}
