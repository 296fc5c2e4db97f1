package tankyard.engine.pipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tankyard.engine.fluids.Liquid;

/** What height alone costs, in a line held full: the promises of the static part of the march. */
class LiftContractTest {
  private static final Liquid BRINE = new Liquid(1060, 1.1e-3);

  /** Enough to hold each of the lines below full. */
  private static final double FULL_PA = 2e6;

  private static final double[] FLOWS = {1e-9, 1e-6, 1e-4, 1e-3, 5e-3};

  private static MarchResult march(double rise, double flow, double downstreamPa) {
    return LineLaw.of(new PipeRun(0.0493, 4.6e-5, PipePath.straight(600, rise), MinorLosses.ofK(3)))
        .march(flow, BRINE, downstreamPa);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-80, -3, 0, 7, 90})
  void it_does_not_depend_on_the_flow(double rise) {
    double still = march(rise, 0, FULL_PA).staticPascals();
    for (double flow : FLOWS) {
      assertThat(march(rise, flow, FULL_PA).staticPascals()).isCloseTo(still, within(1e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 7, 90})
  void the_other_way_up_it_gives_back_what_it_cost(double rise) {
    assertThat(march(-rise, 1e-3, FULL_PA).staticPascals())
        .isCloseTo(-march(rise, 1e-3, FULL_PA).staticPascals(), within(1e-6));
    assertThat(march(rise, 1e-3, FULL_PA).staticPascals()).isPositive();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-80, -3, 0, 7, 90})
  void the_whole_grows_with_the_flow_without_a_jump_from_standing_still(double rise) {
    double last = march(rise, 0, FULL_PA).upstreamPascals();
    assertThat(march(rise, 1e-12, FULL_PA).upstreamPascals()).isCloseTo(last, within(1e-3));
    for (double flow : FLOWS) {
      double now = march(rise, flow, FULL_PA).upstreamPascals();
      assertThat(now).as("at %s m3/s", flow).isGreaterThan(last);
      last = now;
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-80, -3, 0, 7, 90})
  void its_slopes_are_difference_quotients(double rise) {
    for (double flow : FLOWS) {
      double h = 1e-2 * flow;
      MarchResult at = march(rise, flow, FULL_PA);
      double perFlow =
          (march(rise, flow + h, FULL_PA).upstreamPascals()
                  - march(rise, flow - h, FULL_PA).upstreamPascals())
              / (2 * h);
      // Rounding leaves some 1e-9 Pa of two megapascals open, however small the step.
      assertThat(at.upstreamPerFlow())
          .as("at %s m3/s", flow)
          .isCloseTo(perFlow, within(1e-3 * perFlow + 1e-8 / h));
      double more = march(rise, flow, FULL_PA + 1000).upstreamPascals() - at.upstreamPascals();
      assertThat(at.upstreamPerDownstream()).isCloseTo(more / 1000, within(1e-9));
    }
  }
}
