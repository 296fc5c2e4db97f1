package tankyard.engine.wells;

import java.util.Collection;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Keeps {@link RunningTogether} small where many wells are all different: their sums would double
 * with every well. Where there are few sums the rates are left as they are and the distribution is
 * exact; else every rate is rounded up to the next of some thousands of equal steps, so that no sum
 * comes out below the true one, nor above it by more than a step for each well that runs.
 */
public final class RateSteps {
  private static final int MOST_SUMS = 4096;
  private static final int STEPS_PER_WELL = 200;
  private static final int MOST_STEPS = 20_000;

  private final double step;

  private RateSteps(double step) {
    this.step = step;
  }

  /**
   * Steps for wells of which any may come together.
   *
   * @param rates while running, of those that don't run all day
   */
  public static RateSteps of(Collection<Double> rates) {
    Map<Double, Long> alike =
        rates.stream().collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    double sums = alike.values().stream().mapToDouble(n -> n + 1).reduce(1, (a, b) -> a * b);
    double all = rates.stream().mapToDouble(Double::doubleValue).sum();
    int steps = Math.min(MOST_STEPS, STEPS_PER_WELL * rates.size());
    return new RateSteps(sums <= MOST_SUMS || all == 0 ? 0 : all / steps);
  }

  /** Whether rates are left as they are. */
  public boolean exact() {
    return step == 0;
  }

  /** A rate, or the step above it. */
  public double up(double rate) {
    return exact() ? rate : Math.ceil(rate / step - 1e-9) * step;
  }

  /** The most that so many wells' rates may come out too high together. */
  public double mostOver(int wells) {
    return wells * step;
  }
}
