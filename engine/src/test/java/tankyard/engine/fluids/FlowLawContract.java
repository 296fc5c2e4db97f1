package tankyard.engine.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What every pressure loss promises; each law's test implements this. */
public interface FlowLawContract {
  int PER_DECADE = 400;

  /** The law held to the promises. */
  FlowLaw law();

  /** Flows, rising, from far below to far above what a lease sees: 1e-8 to 1 m3/s. */
  private static List<Double> flows() {
    List<Double> flows = new ArrayList<>();
    for (int i = 0; i <= 8 * PER_DECADE; i++) {
      flows.add(1e-8 * Math.pow(10, (double) i / PER_DECADE));
    }
    return flows;
  }

  @Test
  default void no_flow_loses_nothing() {
    assertThat(law().drop(0).pascals()).isZero();
    assertThat(law().drop(0).slope()).isNotNegative().isFinite();
  }

  @Test
  default void backward_flow_loses_as_much_backward() {
    for (double q : flows()) {
      assertThat(law().drop(-q).pascals()).isEqualTo(-law().drop(q).pascals());
      assertThat(law().drop(-q).slope()).isEqualTo(law().drop(q).slope());
    }
  }

  @Test
  default void more_flow_loses_strictly_more() {
    double last = 0;
    for (double q : flows()) {
      double now = law().drop(q).pascals();
      assertThat(now).as("at %s m3/s", q).isGreaterThan(last);
      last = now;
    }
  }

  @Test
  default void there_are_no_jumps() {
    for (double q : flows()) {
      double before = law().drop(q * (1 - 1e-9)).pascals();
      double after = law().drop(q * (1 + 1e-9)).pascals();
      assertThat(after - before).as("at %s m3/s", q).isLessThan(1e-7 * after);
    }
  }

  @Test
  default void the_slope_is_the_slope_of_the_drop() {
    for (double q : flows()) {
      double h = 1e-5 * q;
      double quotient = (law().drop(q + h).pascals() - law().drop(q - h).pascals()) / (2 * h);
      double slope = law().drop(q).slope();
      // Looser only within a step of the two joints, where the curvature jumps.
      assertThat(slope).as("at %s m3/s", q).isCloseTo(quotient, within(2e-5 * quotient));
    }
  }
}
