package tankyard.engine.network.elements;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tankyard.engine.fluids.FlowLaw;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.network.Link;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.units.WellResistance;
import tankyard.engine.wells.InjectionLaw;

/** What every element promises the solver, and what each promises beside. */
class LinkContractTest {
  private static final FlowLaw OPEN = FlowLaw.quadratic(4e10);
  private static final CheckValve CHECK = new CheckValve(OPEN);
  private static final Regulator REGULATOR = new Regulator(1.2e5, 1e7, OPEN);
  private static final Pump CENTRIFUGAL =
      new Pump(PumpGain.Curve.through(4e5, 1e-3, 3.5e5, 2e-3, 1.5e5));
  private static final Pump EVEN_POWER = new Pump(new PumpGain.ConstantPower(300, 1e6));
  private static final InjectionWell WELL =
      new InjectionWell(
          new InjectionLaw(
              Pressure.ofPsi(85), WellResistance.of(0.26, Unit.PSI_PER_BARREL_PER_DAY)));
  private static final Loss DUMP = Loss.valve(Cv.ofGpmPerRootPsi(9), new Liquid(1060, 1.1e-3));

  /** Both ends of every kink, and flows far from any. */
  private static final double[] FLOWS = {
    -3e-3, -1e-4, -1e-7, -1e-9, 0, 1e-10, 3e-9, 2e-8, 1e-7, 1e-5, 5e-4, 5.9e-4, 6.1e-4, 2e-3, 4e-3
  };

  static Stream<Link> elements() {
    return Stream.of(CHECK, REGULATOR, CENTRIFUGAL, EVEN_POWER, WELL, DUMP);
  }

  @ParameterizedTest
  @MethodSource("elements")
  void what_the_start_has_over_the_end_grows_with_the_flow(Link link) {
    double before = Double.NEGATIVE_INFINITY;
    for (double flow : FLOWS) {
      double now = startOverEnd(link, flow, 5e4);
      assertThat(now).as("%s at %s", link, flow).isGreaterThanOrEqualTo(before);
      before = now;
    }
    assertThat(before).isGreaterThan(startOverEnd(link, FLOWS[0], 5e4) + 1e4);
  }

  @ParameterizedTest
  @MethodSource("elements")
  void it_never_jumps(Link link) {
    for (double flow = -1e-7; flow < 1e-6; flow += 1e-9) {
      double here = startOverEnd(link, flow, 5e4);
      double next = startOverEnd(link, flow + 1e-16, 5e4);
      assertThat(next).as("%s at %s", link, flow).isCloseTo(here, Offset.offset(0.01));
    }
    double still = startOverEnd(link, -0.0, 5e4);
    assertThat(startOverEnd(link, -1e-15, 5e4)).isCloseTo(still, Offset.offset(0.1));
  }

  @ParameterizedTest
  @MethodSource("elements")
  void its_slopes_are_difference_quotients(Link link) {
    for (double flow : FLOWS) {
      double h = Math.max(Math.abs(flow), 1e-10) * 1e-5;
      Link.Upstream at = link.upstream(flow, 5e4);
      double outwards = flow >= 0 ? h : -h;
      double up = link.upstream(flow + outwards, 5e4).pressurePa();
      assertThat((up - at.pressurePa()) / h)
          .as("%s, flow %s", link, flow)
          .isCloseTo(at.perFlow(), Offset.offset(1e-3 * Math.abs(at.perFlow()) + 1e-9 / h));
      double below = link.upstream(flow, 5e4 + 1).pressurePa() - at.pressurePa();
      assertThat(below)
          .as("%s, downstream at flow %s", link, flow)
          .isCloseTo(at.perDownstream(), Offset.offset(1e-6));
    }
  }

  @Test
  void a_valve_that_stands_open_is_odd() {
    assertThat(DUMP.upstream(-1e-3, 0)).isEqualTo(DUMP.upstream(1e-3, 0));
  }

  @Test
  void a_check_valve_holds_a_bar_back_but_for_a_litre_a_day() {
    double litreADay = 1e-3 / 86400;
    assertThat(CHECK.upstream(-litreADay, 0).pressurePa()).isCloseTo(1e5, Offset.offset(1e-6));
  }

  @Test
  void a_regulator_holds_its_setting_whatever_stands_behind_until_it_is_wide_open() {
    double rate = 2e-4;
    double held = 1.2e5 + 1e7 * rate;
    assertThat(REGULATOR.upstream(rate, 0).pressurePa()).isEqualTo(held);
    assertThat(REGULATOR.upstream(rate, 1e5).pressurePa()).isEqualTo(held);
    assertThat(REGULATOR.upstream(rate, 3e5).pressurePa())
        .isEqualTo(3e5 + OPEN.drop(rate).pascals());
  }

  @Test
  void a_pump_curve_goes_through_both_duties() {
    assertThat(CENTRIFUGAL.upstream(1e-3, 0).pressurePa()).isCloseTo(-3.5e5, Offset.offset(1e-6));
    assertThat(CENTRIFUGAL.upstream(2e-3, 0).pressurePa()).isCloseTo(-1.5e5, Offset.offset(1e-6));
  }

  @Test
  void a_pump_of_even_power_puts_it_into_any_flow_past_half_its_most_pressure() {
    for (double flow : new double[] {6e-4, 1e-3, 5e-3}) {
      assertThat(-EVEN_POWER.upstream(flow, 0).pressurePa() * flow)
          .isCloseTo(300, Offset.offset(1e-9));
    }
    assertThat(-EVEN_POWER.upstream(0, 0).pressurePa()).isEqualTo(1e6);
  }

  /** Pressure at the start less a fixed one at the end, as the flow goes from back to forward. */
  private static double startOverEnd(Link link, double flow, double endPa) {
    if (flow >= 0) {
      return link.upstream(flow, endPa).pressurePa() - endPa;
    }
    // Backward the end is upstream: find the start's pressure that gives the end's.
    Link.Upstream at = link.upstream(flow, endPa);
    return endPa - at.pressurePa();
  }
}
