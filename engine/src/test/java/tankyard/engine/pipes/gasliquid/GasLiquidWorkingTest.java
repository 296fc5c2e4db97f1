package tankyard.engine.pipes.gasliquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.fluids.Atmosphere;
import tankyard.engine.fluids.GasModel;
import tankyard.engine.fluids.GasSpec;
import tankyard.engine.fluids.HeldGas;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.fluids.OilSpec;
import tankyard.engine.pipes.LineLaw;
import tankyard.engine.pipes.MinorLosses;
import tankyard.engine.pipes.PipePath;
import tankyard.engine.pipes.PipeRun;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** What is printed of a march gives the printed digits, down to the step written out. */
class GasLiquidWorkingTest {
  private static final AbsolutePressure AIR = Atmosphere.at(0);
  private static final Temperature COOL = Temperature.ofFahrenheit(60);
  private static final GasLiquidFluids FLUIDS =
      new GasLiquidFluids(
          new Liquid(930, 0.02),
          new GasModel(GasSpec.ofGravity(0.75)),
          COOL,
          GasLiquidFluids.USUAL_TENSION);
  private static final MinorLosses FITTINGS =
      MinorLosses.ofExtraLength(20).plus(MinorLosses.ofK(2));

  @Test
  void every_printed_step_gives_what_the_march_took() {
    Set<FlowPattern> seen = EnumSet.noneOf(FlowPattern.class);
    for (double liquid = 5; liquid < 6000; liquid *= 1.7) {
      for (double gas = 0.2; gas < 300; gas *= 1.7) {
        for (double rise : new double[] {-6, 0, 25}) {
          GasLiquidWorking working = marched(liquid, gas, rise);
          if (working.march().points().get(0).gradient().choking()) {
            continue;
          }
          seen.add(working.march().hardest().gradient().pattern());
          Working step = working.loss().working().from().get(0);
          assertThat(step.value())
              .as("%s bbl/d, %s Mcf/d, rise %s", liquid, gas, rise)
              .isCloseTo(
                  Unit.PSI.fromSi(working.march().hardest().pascals()), withinPercentage(0.01));
          assertTermsComeFromTheirWorkings(step);
        }
      }
    }
    assertThat(seen)
        .contains(
            FlowPattern.SEGREGATED,
            FlowPattern.TRANSITION,
            FlowPattern.INTERMITTENT,
            FlowPattern.DISTRIBUTED);
  }

  @Test
  void the_sums_are_what_the_line_lifts_and_loses() {
    GasLiquidWorking working = marched(200, 15, 20);
    double over = Unit.PSI.fromSi(working.march().upstream().pascals()) - separator().toPsia();
    assertThat(working.lift().value().toPsi() + working.loss().value().toPsi())
        .isCloseTo(over, within(1e-9));
    assertThat(working.lift().working().value())
        .isCloseTo(working.lift().value().toPsi(), within(1e-4));
    assertThat(working.loss().working().value())
        .isCloseTo(working.loss().value().toPsi(), within(1e-4));
    assertThat(working.loss().working().title()).contains(working.march().steps() + " steps");
  }

  /** 100/sqrt(rho) with rho 6.25 lb/ft3 would be 40 ft/s; here against the density printed. */
  @Test
  void the_wear_velocity_is_a_hundred_over_the_root_of_the_density() {
    Working wear = marched(200, 15, 20).erosional().orElseThrow().working();
    double density = wear.terms().get(1).value();
    assertThat(wear.value()).isCloseTo(100 / Math.sqrt(density), withinPercentage(1e-4));
    assertThat(marched(200, 0, 20).erosional()).isEmpty();
  }

  /** Each term that has a working of its own symbol is what that working gives. */
  private static void assertTermsComeFromTheirWorkings(Working working) {
    for (Working source : working.from()) {
      for (Term term : working.terms()) {
        if (term.symbol().equals(source.symbol())) {
          assertThat(term.unit().toSi(term.value()))
              .as("%s of %s", term.line(), source.line())
              .isCloseTo(source.unit().toSi(source.value()), withinPercentage(0.02));
        }
      }
      assertTermsComeFromTheirWorkings(source);
    }
  }

  private static AbsolutePressure separator() {
    return AbsolutePressure.ofPsia(34.7);
  }

  private static GasLiquidWorking marched(double barrels, double mcf, double rise) {
    PipeRun run = new PipeRun(0.0493, 4.5e-5, PipePath.straight(300, rise), FITTINGS);
    GasLiquidLine line = new GasLiquidLine(LineLaw.of(run), true);
    double liquid = Unit.BARREL_PER_DAY.toSi(barrels);
    HeldGas held = new HeldGas(new OilSpec(Gravity.ofApi(35), List.of()), 0.75, COOL, AIR);
    GasLiquidFlow flow =
        new GasLiquidFlow(
            liquid, Unit.MCF_PER_DAY.toSi(mcf), Optional.of(new Solution(0.3 * liquid, held)));
    GasLiquidMarch march = line.march(flow, FLUIDS, separator(), AIR);
    return new GasLiquidWorking(line, flow, List.of(FLUIDS), march);
  }
}
