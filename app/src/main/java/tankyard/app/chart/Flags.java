package tankyard.app.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Labels on poles: each mark on a line has a pole, and a label hangs to the right or to the left of
 * it, as near to the line as it can. No label ever lies over another; a pole passes behind a label
 * only where nothing else is left.
 */
public final class Flags {
  private static final double POLE = 4; // between the pole and its label
  private static final double LANE_COST = 10;
  private static final double CROSSING_COST = 1000;

  private final double from;
  private final double to;
  private final double gap;

  /**
   * Room for flags.
   *
   * @param from left end
   * @param to right end
   * @param gap least room between two labels of one lane
   */
  public Flags(double from, double to, double gap) {
    this.from = from;
    this.to = to;
    this.gap = gap;
  }

  /** On which side of its pole a label hangs. */
  public enum Side {
    RIGHT(0),
    LEFT(0),
    /** Across the pole, pushed in from the ends where need be. */
    ACROSS(6);

    private final double cost;

    Side(double cost) {
      this.cost = cost;
    }
  }

  /** A label to be hung. */
  public record Flag(double mark, double width, Side preferred) {}

  /**
   * Where a label hangs.
   *
   * @param left its left edge
   * @param lane 0 is next to the line of marks
   */
  public record Spot(double left, int lane) {}

  private record Hung(Flag flag, double left, int lane) {
    boolean overlaps(Hung other, double gap) {
      return lane == other.lane
          && left < other.left + other.flag.width + gap
          && other.left < left + flag.width + gap;
    }

    /** Whether its pole passes behind the other's label. */
    boolean crosses(Hung other) {
      return other.lane < lane
          && flag.mark > other.left - 1
          && flag.mark < other.left + other.flag.width + 1;
    }
  }

  /** A spot for each flag, in the order given. */
  public List<Spot> place(List<Flag> flags) {
    List<Integer> leftToRight =
        IntStream.range(0, flags.size())
            .boxed()
            .sorted(Comparator.comparing((Integer i) -> flags.get(i).mark()))
            .toList();
    List<Integer> rightToLeft = new ArrayList<>(leftToRight);
    java.util.Collections.reverse(rightToLeft);
    Hung[] one = hang(flags, leftToRight);
    Hung[] two = hang(flags, rightToLeft);
    Hung[] better = cost(one) <= cost(two) ? one : two;
    return java.util.Arrays.stream(better).map(h -> new Spot(h.left, h.lane)).toList();
  }

  public static int lanes(List<Spot> spots) {
    return spots.stream().mapToInt(s -> s.lane() + 1).max().orElse(0);
  }

  private Hung[] hang(List<Flag> flags, List<Integer> order) {
    Hung[] hung = new Hung[flags.size()];
    List<Hung> done = new ArrayList<>();
    for (int i : order) {
      Hung best = best(flags.get(i), done);
      done.add(best);
      hung[i] = best;
    }
    return hung;
  }

  /** There is always one: the lane past all others is empty. */
  private Hung best(Flag flag, List<Hung> done) {
    List<Hung> candidates = new ArrayList<>();
    for (int lane = 0; lane <= done.size(); lane++) {
      for (Side side : Side.values()) {
        Hung hung = new Hung(flag, left(flag, side), lane);
        boolean inside = hung.left >= from && hung.left + flag.width <= to || side == Side.ACROSS;
        if (inside && done.stream().noneMatch(h -> h.overlaps(hung, gap))) {
          candidates.add(hung);
        }
      }
    }
    return candidates.stream().min(Comparator.comparingDouble(h -> cost(h, done))).orElseThrow();
  }

  private double left(Flag flag, Side side) {
    return switch (side) {
      case RIGHT -> flag.mark + POLE;
      case LEFT -> flag.mark - POLE - flag.width;
      case ACROSS -> Math.max(from, Math.min(flag.mark - flag.width / 2, to - flag.width));
    };
  }

  private double cost(Hung hung, List<Hung> others) {
    long crossings = others.stream().filter(o -> hung.crosses(o) || o.crosses(hung)).count();
    Side side = sideOf(hung);
    double aside = side == hung.flag.preferred ? 0 : 3;
    return hung.lane * LANE_COST + crossings * CROSSING_COST + side.cost + aside;
  }

  private Side sideOf(Hung hung) {
    return hung.left == left(hung.flag, Side.RIGHT)
        ? Side.RIGHT
        : hung.left == left(hung.flag, Side.LEFT) ? Side.LEFT : Side.ACROSS;
  }

  private double cost(Hung[] all) {
    double sum = 0;
    for (Hung hung : all) {
      sum += cost(hung, java.util.Arrays.stream(all).filter(other -> other != hung).toList());
    }
    return sum;
  }
}
