package tankyard.engine.pipes.gasliquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.fluids.Gas;
import tankyard.engine.fluids.Liquid;

/**
 * What the gas-liquid gradient promises; it can't promise that more flow asks for more pressure.
 */
class BeggsBrillContractTest {
  private static final double BORE = 0.0493;
  private static final BeggsBrill LAW = BeggsBrill.original(BORE, 1.5e-6);
  private static final BeggsBrill PAYNE = new BeggsBrill(BORE, 1.5e-6, true);
  private static final AbsolutePressure PRESSURE = AbsolutePressure.ofPsia(45);
  private static final Phases OIL = new Phases(new Liquid(880, 0.03), new Gas(2.6, 1.1e-5), 0.025);

  /** exp S at y = 50, the top of the published curve. */
  private static final double MOST_SLIP = 3.2;

  private static final int DRAWN = 20_000;

  @Test
  void holdup_lies_between_none_and_all() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < DRAWN; i++) {
      BeggsBrill law = i % 2 == 0 ? LAW : PAYNE;
      Gradient g =
          law.at(
              Math.pow(10, random.nextDouble(-5, 1)),
              Math.pow(10, random.nextDouble(-5, 1.5)),
              OIL,
              random.nextDouble(-Math.PI / 2, Math.PI / 2),
              PRESSURE);
      assertThat(g.holdUp()).as("%s", g).isGreaterThan(0).isLessThanOrEqualTo(1);
      assertThat(g.frictionPaPerM()).as("%s", g).isPositive().isFinite();
      assertThat(g.totalPaPerM()).as("%s", g).isFinite();
      assertThat(g.mixtureKgPerM3()).isBetween(2.6, 880.0 + 1e-9);
    }
  }

  /** Not for every small step: the slip factor has a notch of some per cent where l = H^2. */
  @Test
  void twice_the_flow_costs_more_friction_within_a_pattern() {
    for (double part : new double[] {0.003, 0.05, 0.3, 0.7, 0.95}) {
      for (double slope : new double[] {-0.3, -0.02, 0, 0.02, 0.3}) {
        for (double speed = 0.005; speed < 20; speed *= 1.02) {
          Gradient one = at(part, speed, slope);
          Gradient two = at(part, 2 * speed, slope);
          if (one.pattern() == two.pattern()) {
            assertThat(two.frictionPaPerM())
                .as("part %s, slope %s, %s", part, slope, two)
                .isGreaterThan(one.frictionPaPerM());
          }
        }
      }
    }
  }

  @Test
  void uphill_holds_more_liquid_than_level_and_downhill_less() {
    for (double speed = 0.05; speed < 10; speed *= 1.1) {
      for (double part : new double[] {0.005, 0.1, 0.5}) {
        double level = at(part, speed, 0).holdUp();
        assertThat(at(part, speed, 0.2).holdUp()).isGreaterThanOrEqualTo(level - 1e-12);
        assertThat(at(part, speed, -0.2).holdUp()).isLessThanOrEqualTo(level + 1e-12);
      }
    }
  }

  @Test
  void lift_has_the_sign_of_the_slope() {
    assertThat(at(0.3, 1, 0.2).liftPaPerM()).isPositive();
    assertThat(at(0.3, 1, 0).liftPaPerM()).isZero();
    assertThat(at(0.3, 1, -0.2).liftPaPerM()).isNegative();
  }

  @Test
  void a_trace_of_gas_hardly_changes_the_liquid() {
    for (double speed = 0.05; speed < 5; speed *= 1.3) {
      Gradient liquid = LAW.at(speed, 0, OIL, 0.1, PRESSURE);
      assertThat(liquid.pattern()).isEqualTo(FlowPattern.LIQUID);
      assertThat(liquid.holdUp()).isEqualTo(1);
      Gradient trace = LAW.at(speed, 1e-6 * speed, OIL, 0.1, PRESSURE);
      assertThat(trace.totalPaPerM()).isCloseTo(liquid.totalPaPerM(), withinPercentage(0.1));
    }
  }

  @Test
  void a_trace_of_liquid_costs_no_more_than_the_top_of_the_slip_factor() {
    for (double speed = 0.2; speed < 20; speed *= 1.1) {
      Gradient gas = LAW.at(0, speed, OIL, 0, PRESSURE);
      assertThat(gas.pattern()).isEqualTo(FlowPattern.GAS);
      assertThat(gas.holdUp()).isZero();
      Gradient trace = LAW.at(1e-7 * speed, speed, OIL, 0, PRESSURE);
      assertThat(trace.frictionPaPerM() / gas.frictionPaPerM()).isBetween(0.95, MOST_SLIP);
    }
  }

  @Test
  void the_slip_factor_has_no_jump_where_its_two_forms_meet() {
    for (double y : new double[] {1, 1.2}) {
      double below = BeggsBrill.slip(y * (1 - 1e-9), 1);
      assertThat(BeggsBrill.slip(y * (1 + 1e-9), 1)).isCloseTo(below, within(1e-3));
    }
  }

  @Test
  void the_slip_factor_lies_between_one_and_its_top() {
    for (double y = 1e-6; y < 1e6; y *= 1.001) {
      assertThat(Math.exp(BeggsBrill.slip(y, 1))).as("y %s", y).isBetween(1.0, MOST_SLIP);
    }
  }

  @Test
  void the_slip_factor_is_held_before_its_pole() {
    for (double part = 1e-6; part < 0.01; part *= 1.1) {
      assertThat(BeggsBrill.slip(part, 1)).isEqualTo(BeggsBrill.slip(0.01, 1));
    }
  }

  @Test
  void gas_that_nears_its_speed_of_sound_is_said() {
    Gradient gas = LAW.at(2, 150, OIL, 0, AbsolutePressure.ofPsia(15));
    assertThat(gas.choking()).isTrue();
    assertThat(gas.totalPaPerM()).isFinite();
    assertThat(at(0.3, 1, 0).choking()).isFalse();
  }

  @Test
  void standing_still_is_refused() {
    assertThatThrownBy(() -> LAW.at(0, 0, OIL, 0, PRESSURE)).hasMessageContaining("move");
    assertThatThrownBy(() -> LAW.at(-1, 2, OIL, 0, PRESSURE)).hasMessageContaining("forward");
  }

  private static Gradient at(double part, double speed, double slope) {
    return LAW.at(part * speed, (1 - part) * speed, OIL, slope, PRESSURE);
  }
}
