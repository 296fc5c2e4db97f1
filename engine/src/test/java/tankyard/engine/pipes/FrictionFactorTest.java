package tankyard.engine.pipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class FrictionFactorTest {
  @Property
  void a_turbulent_factor_is_the_root_of_colebrook(
      @ForAll @DoubleRange(min = 3.61, max = 9) double logReynolds,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.05) double rough) {
    double reynolds = Math.pow(10, logReynolds);
    double x = 1 / Math.sqrt(FrictionFactor.at(reynolds, rough).factor());
    double right = -2 * Math.log10(rough / 3.7 + 2.51 * x / reynolds);
    assertThat(x).isCloseTo(right, within(1e-12 * x));
  }

  @Test
  void both_joints_meet_in_value_and_slope() {
    for (double rough : new double[] {0, 1e-4, 1e-2, 0.05, 0.1}) {
      FrictionFactor low = FrictionFactor.at(2000, rough);
      FrictionFactor aboveLow = FrictionFactor.at(2000 * (1 + 1e-12), rough);
      assertThat(aboveLow.factor()).isCloseTo(low.factor(), within(1e-12));
      assertThat(aboveLow.exponent()).isCloseTo(low.exponent(), within(1e-9));
      FrictionFactor high = FrictionFactor.at(4000, rough);
      FrictionFactor belowHigh = FrictionFactor.at(4000 * (1 - 1e-12), rough);
      assertThat(belowHigh.factor()).isCloseTo(high.factor(), within(1e-12));
      assertThat(belowHigh.exponent()).isCloseTo(high.exponent(), within(1e-9));
    }
  }

  @Test
  void between_the_joints_friction_always_grows_with_flow() {
    for (double rough : new double[] {0, 1e-3, 0.05, 0.2, 0.4}) {
      for (double reynolds = 2001; reynolds < 4000; reynolds += 7) {
        assertThat(FrictionFactor.at(reynolds, rough).exponent()).isPositive();
      }
    }
  }
}
