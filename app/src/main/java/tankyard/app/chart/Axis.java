package tankyard.app.chart;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.units.Figures;

/**
 * An axis with round ends and round steps of 1, 2 or 5 times a power of ten.
 *
 * @param low a multiple of the step
 * @param high a multiple of the step, above {@code low}
 */
public record Axis(double low, double high, double step) {
  public Axis {
    if (!(step > 0) || !(high > low)) {
      throw new IllegalArgumentException(
          "An axis from " + low + " to " + high + " by " + step + " can't be drawn");
    }
  }

  /**
   * The tightest round axis that holds all values.
   *
   * @param steps about how many steps are wanted
   */
  public static Axis holding(double lowest, double highest, int steps) {
    double span = highest - lowest;
    double range = span > 0 ? span : Math.max(1, Math.abs(highest));
    double step = roundStep(range / Math.max(1, steps));
    double low = Math.floor(lowest / step + 1e-9) * step;
    double high = Math.ceil(highest / step - 1e-9) * step;
    return new Axis(low, high > low ? high : low + step, step);
  }

  public List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    long first = Math.round(low / step);
    long last = Math.round(high / step);
    for (long i = first; i <= last; i++) {
      ticks.add(i * step);
    }
    return ticks;
  }

  /** The tick as digits, with as many decimals as its step needs. */
  public String label(double tick) {
    int decimals = Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
    return decimals == 0 ? Figures.grouped(tick) : Figures.decimals(tick, decimals);
  }

  private static double roundStep(double rough) {
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    double share = rough / power;
    double round = share <= 1 + 1e-9 ? 1 : share <= 2 + 1e-9 ? 2 : share <= 5 + 1e-9 ? 5 : 10;
    return round * power;
  }
}
