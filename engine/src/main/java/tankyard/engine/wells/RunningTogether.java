package tankyard.engine.wells;

import java.util.Arrays;

/**
 * What several wells make at once when each runs its share of the day at a time of its own: every
 * sum of running rates that can come about, with its chance. One well more is one convolution with
 * the two points "stands" and "runs". Sums that are alike are one, so wells that are alike make
 * few: then this is the binomial distribution.
 *
 * <p>Holds for wells that start and stop independently of one another. After an outage they do not:
 * all come on together.
 */
public final class RunningTogether {
  /** No well at all. */
  public static final RunningTogether NONE =
      new RunningTogether(new double[] {0}, new double[] {1}, 0);

  /** Two sums closer than this share of all together are one sum that was added up differently. */
  private static final double ALIKE = 1e-11;

  /** A chance added up from thousands of terms misses by this much at most. */
  private static final double SLIP = 1e-12;

  private final double[] sums;
  private final double[] chances;
  private final double all;

  private RunningTogether(double[] sums, double[] chances, double all) {
    this.sums = sums;
    this.chances = chances;
    this.all = all;
  }

  /**
   * The same with one well more.
   *
   * @param rate while it runs
   * @param share of the time it runs, above 0 and up to 1
   */
  public RunningTogether and(double rate, double share) {
    if (!(rate >= 0 && share > 0 && share <= 1)) {
      throw new IllegalArgumentException(
          "A well runs above 0 and up to all of the time, at no less than nothing: "
              + share
              + ", "
              + rate);
    }
    double more = all + rate;
    if (share == 1) {
      return new RunningTogether(plus(rate), chances, more);
    }
    return rate == 0 ? this : merged(plus(rate), share, more);
  }

  private double[] plus(double rate) {
    double[] moved = new double[sums.length];
    Arrays.setAll(moved, i -> sums[i] + rate);
    return moved;
  }

  private RunningTogether merged(double[] moved, double share, double more) {
    int n = sums.length;
    double alike = ALIKE * more;
    double[] to = new double[2 * n];
    double[] chance = new double[2 * n];
    int size = 0;
    int stands = 0;
    int runs = 0;
    while (stands < n || runs < n) {
      boolean first = runs == n || (stands < n && sums[stands] <= moved[runs]);
      double sum = first ? sums[stands] : moved[runs];
      double part = first ? chances[stands++] * (1 - share) : chances[runs++] * share;
      if (size > 0 && sum - to[size - 1] <= alike) {
        chance[size - 1] += part;
      } else {
        to[size] = sum;
        chance[size++] = part;
      }
    }
    return new RunningTogether(Arrays.copyOf(to, size), Arrays.copyOf(chance, size), more);
  }

  /** The least rate that is not passed for that share of the time. */
  public double notPassed(double share) {
    double sofar = 0;
    for (int i = 0; i < sums.length; i++) {
      sofar += chances[i];
      if (sofar >= share - SLIP) {
        return sums[i];
      }
    }
    return sums[sums.length - 1];
  }

  /** Share of the time the rate is above that one. */
  public double chanceAbove(double rate) {
    double above = 0;
    for (int i = sums.length - 1; i >= 0 && sums[i] > rate + ALIKE * all; i--) {
      above += chances[i];
    }
    return above;
  }

  /** The rate with all of them on. */
  public double allOn() {
    return all;
  }

  /** Share of the time all are on. */
  public double chanceOfAllOn() {
    return chances[chances.length - 1];
  }

  /** How many different sums there are. */
  int sums() {
    return sums.length;
  }
}
