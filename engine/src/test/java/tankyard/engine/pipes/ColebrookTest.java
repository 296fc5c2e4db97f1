package tankyard.engine.pipes;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * Newton's answer to Colebrook's equation against one found by halving, which shares nothing with
 * it.
 */
class ColebrookTest {
  @Test
  void the_factor_is_right_to_ten_digits_over_the_whole_chart() {
    int points = 0;
    for (double reynolds = 4000; reynolds < 1.1e8; reynolds *= 1.17) {
      for (double rough : new double[] {0, 1e-7, 1e-6, 1e-5, 1e-4, 5e-4, 2e-3, 1e-2, 0.05}) {
        assertThat(FrictionFactor.at(reynolds, rough).factor())
            .as("Re %s, roughness %s", reynolds, rough)
            .isCloseTo(halved(reynolds, rough), Percentage.withPercentage(1e-8));
        points++;
      }
    }
    assertThat(points).isGreaterThan(500);
  }

  private static double halved(double reynolds, double rough) {
    double low = 1;
    double high = 100;
    for (int i = 0; i < 200; i++) {
      double x = (low + high) / 2;
      if (x + 2 * Math.log10(rough / 3.7 + 2.51 * x / reynolds) > 0) {
        high = x;
      } else {
        low = x;
      }
    }
    return 1 / (low * low);
  }
}
