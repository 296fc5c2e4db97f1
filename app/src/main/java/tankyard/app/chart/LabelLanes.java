package tankyard.app.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Puts labels next to their marks along a line so that none lies over another: each is centred on
 * its mark where it can be, kept inside the ends, and moved to a further lane where the nearer ones
 * are taken.
 */
public final class LabelLanes {
  private LabelLanes() {}

  /**
   * Where a label goes.
   *
   * @param left its left edge
   * @param lane 0 is next to the marks
   */
  public record Spot(double left, int lane) {}

  /**
   * Places all labels.
   *
   * @param marks place of each label's mark
   * @param widths of the labels, in the same order
   * @param from left end of the room
   * @param to right end of the room
   * @param gap least room between two labels of a lane
   */
  public static List<Spot> place(
      List<Double> marks, List<Double> widths, double from, double to, double gap) {
    List<Integer> leftToRight =
        IntStream.range(0, marks.size())
            .boxed()
            .sorted(Comparator.comparing((Integer i) -> marks.get(i)))
            .toList();
    List<Double> taken = new ArrayList<>(); // right end of the last label of each lane
    Spot[] spots = new Spot[marks.size()];
    for (int i : leftToRight) {
      double width = widths.get(i);
      double left = inside(marks.get(i) - width / 2, width, from, to);
      int lane = 0;
      while (lane < taken.size() && taken.get(lane) + gap > left) {
        lane++;
      }
      if (lane == taken.size()) {
        taken.add(0.0);
      }
      taken.set(lane, left + width);
      spots[i] = new Spot(left, lane);
    }
    return List.of(spots);
  }

  public static int lanes(List<Spot> spots) {
    return spots.stream().mapToInt(s -> s.lane() + 1).max().orElse(0);
  }

  private static double inside(double left, double width, double from, double to) {
    return Math.max(from, Math.min(left, to - width));
  }
}
