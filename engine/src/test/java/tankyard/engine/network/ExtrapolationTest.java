package tankyard.engine.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Where steps miss by the same share each time, two of them tell the end. */
class ExtrapolationTest {
  private static final double[] END_FLOW = {3, -1, 0.5};
  private static final double[] END_PRESSURE = {100, 40};
  private static final double LEFT = -0.4;

  @Test
  void theSecondStepFindsTheEnd() {
    Extrapolation extrapolation = new Extrapolation();
    double[] flow = {1, 1, 1};
    double[] pressure = {0, 0};
    for (int step = 0; step < 2; step++) {
      flow = stepped(flow, pressure, extrapolation);
    }
    assertThat(flow).containsExactly(END_FLOW, Offset.offset(1e-12));
    assertThat(pressure).containsExactly(END_PRESSURE, Offset.offset(1e-12));
  }

  @Test
  void afterNewSlopesItBeginsAnew() {
    Extrapolation extrapolation = new Extrapolation();
    double[] flow = stepped(new double[] {1, 1, 1}, new double[2], extrapolation);
    extrapolation.forget();
    double[] plain = towards(flow, END_FLOW);
    assertThat(stepped(flow, new double[2], extrapolation)).containsExactly(plain);
  }

  /** One step and what it is moved to; the pressures are left in place. */
  private static double[] stepped(double[] flow, double[] pressure, Extrapolation extrapolation) {
    double[] toFlow = towards(flow, END_FLOW);
    double[] toPressure = towards(pressure, END_PRESSURE);
    extrapolation.mix(run -> 1 + run, flow, toFlow, toPressure);
    System.arraycopy(toPressure, 0, pressure, 0, pressure.length);
    return toFlow;
  }

  private static double[] towards(double[] from, double[] end) {
    return IntStream.range(0, from.length)
        .mapToDouble(i -> end[i] + LEFT * (from[i] - end[i]))
        .toArray();
  }
}
