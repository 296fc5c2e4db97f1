package tankyard.engine.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class MonotoneCurveTest {
  @Test
  void it_passes_through_its_points_and_holds_its_ends() {
    MonotoneCurve curve = MonotoneCurve.through(new double[] {0, 1, 3}, new double[] {5, 7, 7.5});

    assertThat(curve.at(0)).isEqualTo(5);
    assertThat(curve.at(1)).isEqualTo(7);
    assertThat(curve.at(3)).isEqualTo(7.5);
    assertThat(curve.at(-2)).isEqualTo(5);
    assertThat(curve.at(9)).isEqualTo(7.5);
    assertThat(curve.covers(3)).isTrue();
    assertThat(curve.covers(3.001)).isFalse();
  }

  @Property
  void where_the_points_rise_the_curve_rises(
      @ForAll @Size(6) double[] noise, @ForAll @DoubleRange(min = 0, max = 5) double at) {
    double[] y = new double[6];
    for (int i = 1; i < 6; i++) {
      y[i] = y[i - 1] + Math.abs(Math.IEEEremainder(noise[i], 50)) + 1e-3;
    }
    assertRises(y, at);
  }

  private static void assertRises(double[] y, double at) {
    if (!Double.isFinite(Arrays.stream(y).sum())) {
      return;
    }
    MonotoneCurve curve = MonotoneCurve.through(new double[] {0, 1, 2, 3, 4, 5}, y);
    assertThat(curve.at(at + 1e-4)).isGreaterThanOrEqualTo(curve.at(at) - 1e-12);
    assertThat(curve.at(at)).isBetween(y[0], y[5]);
  }

  @Test
  void x_that_does_not_rise_is_refused() {
    assertThatThrownBy(() -> MonotoneCurve.through(new double[] {0, 0}, new double[] {1, 2}))
        .hasMessageContaining("x must rise");
  }
}
